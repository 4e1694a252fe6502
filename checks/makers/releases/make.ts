// Makes checks/fixtures/real/*: release days of three open pieces of software as packages state
// them, and as their makers' own changelogs do. Usage:
//   sh checks/makers/releases/fetch.sh FOLDER && npx tsx checks/makers/releases/make.ts FOLDER
import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { node } from './node.ts';
import { perl } from './perl.ts';
import type { ReleaseSet } from './sets.ts';
import { tz } from './tz.ts';

const folder = process.argv[2];
if (folder === undefined) throw new TypeError('make.ts requires the folder that fetch.sh filled');
const read = (name: string) => readFileSync(join(folder, name), 'utf8');
const out = new URL('../../fixtures/real/', import.meta.url);

function write({ name, truth, market, keep, sources }: ReleaseSet): void {
  const told = (version: string) =>
    Object.entries(sources).filter(([, days]) => days.has(version)).length;
  const kept = [...truth].filter(([version]) => keep(version) && told(version) >= 2);
  kept.sort(([a, x], [b, y]) => (x === y ? (a < b ? -1 : 1) : x < y ? -1 : 1));
  const days = kept.map(([version, day]) => `${version},${market(version)},${day}`);
  const claims = kept.flatMap(([version]) =>
    Object.entries(sources).flatMap(([source, stated]) =>
      stated.has(version) ? [`${version},${source},${stated.get(version)}`] : [],
    ),
  );
  writeFileSync(new URL(`${name}-truth.csv`, out), `version,line,day\n${days.join('\n')}\n`);
  writeFileSync(new URL(`${name}-claims.csv`, out), `version,source,day\n${claims.join('\n')}\n`);
  console.log(`${name}: ${days.length} versions, ${claims.length} claims`);
}

for (const make of [perl, tz, node]) write(make(read));
