// Dates anew after single changes of claims, with the compiled code, and prints what that took.
/** @param {string} folder whose compiled door is wanted */
const door = (folder) => import(new URL(`../../dist/${folder}/index.js`, import.meta.url).href);

const { compareClaims, openDating, redate, withChange } = await door('dating');
const { readDossier } = await door('dossier');
const { isoOf, parseEdtf } = await door('evidence');
const { filesOf } = await door('host');

const CHANGES = 41;
const [folder = ''] = process.argv.slice(2);
const { evidence } = await readDossier(await filesOf(folder));
const { dating, kept } = openDating(evidence);
/** @type {number[]} */
const days = [];
for (const [i, { property, date }] of evidence.claims.entries())
  if (property === 'on-sale' && date.ranges[0].first === date.ranges.at(-1).last) days.push(i);
/** @type {number[]} */
const times = [];
let declined = 0;
for (let n = 0; n < CHANGES; n++) {
  const at = days[Math.floor(((n + 0.5) / CHANGES) * days.length)] ?? 0;
  // After a change the files are read again, so that no claim is the object that it was.
  const claims = structuredClone(evidence.claims);
  const value = isoOf(claims[at].date.ranges[0].first + 1);
  claims[at] = { ...claims[at], value, date: parseEdtf(value).date };
  const began = performance.now();
  const change = compareClaims(evidence, { ...evidence, claims });
  const anew = change && redate(kept, change);
  if (anew) withChange(dating, anew);
  else declined++;
  times.push(performance.now() - began);
}
times.sort((a, b) => a - b);
console.log(JSON.stringify({ changes: CHANGES, declined, medianMs: times[(CHANGES - 1) / 2] }));
