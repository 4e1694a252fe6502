import { scoreOf, total } from './score.ts';
import { sheets } from './sheet.ts';

const share = (part: number, whole: number) =>
  `${((100 * part) / Math.max(1, whole)).toFixed(1)} %`;
const [prefix = '', details] = process.argv.slice(2);
const scores = sheets(prefix).map(scoreOf);
const rows = [...scores, { name: 'all', ...total(scores) }];
for (const row of rows) {
  const { name, stated, found, named, sourced, open, leftOpen, fromNothing } = row;
  console.log(
    `${name.padEnd(28)} found ${share(found, stated)} of ${stated}, named right ${share(found, named)}, ` +
      `source ${share(sourced, found)}, open ${leftOpen}/${open}, from nothing ${fromNothing}`,
  );
}
if (details) for (const score of scores) for (const miss of score.misses) console.log(miss);
const calls = scores.flatMap((score) => score.calls);
for (const [low, high] of [
  [0, 0.6],
  [0.6, 0.8],
  [0.8, 0.9],
  [0.9, 0.95],
  [0.95, 1.01],
] as const) {
  const band = calls.filter(({ p }) => p >= low && p < high);
  const mean = band.reduce((sum, { p }) => sum + p, 0) / Math.max(1, band.length);
  const right = band.filter((call) => call.right).length;
  console.log(
    `p ${low}–${high}: ${band.length} claims, mean p ${mean.toFixed(2)}, right ${share(right, band.length)}`,
  );
}
