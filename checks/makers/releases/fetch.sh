#!/bin/sh
# Gathers the files that make.ts reads: source packages of Debian 12 and three npm packages.
# Usage: sh fetch.sh EMPTY_FOLDER   (needs apt-get with a deb-src line, dpkg-deb, tar, npm)
set -eu
mkdir -p "$1"
cd "$1"
for package in perl tzdata nodejs libdatetime-timezone-perl; do
  apt-get source --download-only "$package"
done
apt-get download libmodule-corelist-perl

upstream() { tar xaf "$1" -O --wildcards "$2"; }
upstream perl_*.orig.tar.xz 'perl-*/pod/perlhist.pod' > perlhist.pod
upstream perl_*.orig.tar.xz 'perl-*/Porting/epigraphs.pod' > epigraphs.pod
upstream perl_*.debian.tar.xz debian/changelog > perl.changelog
dpkg-deb -x libmodule-corelist-perl_*.deb corelist
cp corelist/usr/share/perl5/Module/CoreList.pm CoreList.pm
gzip -dc corelist/usr/share/doc/libmodule-corelist-perl/changelog.gz > CoreList.changes
upstream tzdata_*.orig.tar.gz NEWS > tz.NEWS
upstream tzdata_*.debian.tar.xz debian/changelog > tzdata.changelog
upstream libdatetime-timezone-perl_*.orig.tar.gz '*/Changes' > datetime-timezone.Changes
upstream libdatetime-timezone-perl_*.debian.tar.xz debian/changelog > datetime-timezone.changelog
upstream nodejs_*.orig.tar.xz '*/doc/changelogs/*.md' > node.CHANGELOG
upstream nodejs_*.debian.tar.xz debian/changelog > nodejs.changelog
npm install --prefix npm --ignore-scripts --no-audit --no-fund \
  moment-timezone node-releases @mdn/browser-compat-data
cp npm/node_modules/moment-timezone/changelog.md moment-timezone.md
cp npm/node_modules/node-releases/data/processed/envs.json node-releases.json
cp npm/node_modules/@mdn/browser-compat-data/data.json browser-compat.json
