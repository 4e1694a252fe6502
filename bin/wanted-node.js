// Plain ES5 without dependencies, so that a Node too old for anything else can still read it.
'use strict';

exports.WORDS = 'Node 20.19, 22.12, 24 or later';

/**
 * Whether this version of Node is one that Printlore runs on.
 * @param {string} version as in `process.versions.node`
 * @returns {boolean}
 */
exports.fits = function (version) {
  var parts = version.split('.');
  var major = Number(parts[0]);
  var minor = Number(parts[1]);
  if (major === 20) return minor >= 19;
  if (major === 22) return minor >= 12;
  return major >= 24;
};

/** Ends the process, with a word on what is wanted, where this Node is none of them. */
exports.demand = function () {
  if (exports.fits(process.versions.node)) return;
  console.error(
    'Printlore wants ' + exports.WORDS + '; this is Node ' + process.versions.node + '.'
  );
  process.exit(2);
};
