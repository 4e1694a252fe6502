// Prints how often days agree with the makers' own: npx tsx checks/witness/real/run.ts [SEED …]

import type { Dating } from '../../../src/dating/index.ts';
import * as dating from '../../../src/dating/index.ts';
import type { Evidence } from '../../../src/evidence/index.ts';
import { majority } from '../../simulator/majority.ts';
import { loadReal, REAL_SETS } from './load.ts';
import { type RealScore, scoreReal } from './score.ts';

type DateEvidence = (
  evidence: Evidence,
  options?: { seed?: number; effort?: 'first' | 'refined' },
) => Dating;
const engine = (dating as { date?: DateEvidence }).date;

function line(name: string, score: RealScore, note = ''): string {
  const percent = (share: number) => `${(100 * share).toFixed(1)} %`.padStart(8);
  return `${name.padEnd(22)}${percent(score.exact)}${score.log.toFixed(2).padStart(8)}${percent(
    score.covered,
  )}${percent(score.claimed)}${percent(score.p_best)}  ${note}`;
}

console.log('set, engine            exact  log score  covered claimed  p_best');
for (const name of REAL_SETS) {
  const { evidence, truth } = loadReal(name);
  console.log(line(`${name} majority`, scoreReal(majority(evidence), truth)));
  if (engine === undefined) continue;
  for (const seed of process.argv
    .slice(2)
    .map(Number)
    .concat(process.argv[2] ? [] : [1, 2, 3])) {
    const began = performance.now();
    const dated = engine(evidence, { seed, effort: 'refined' });
    const seconds = ((performance.now() - began) / 1000).toFixed(1);
    console.log(line(`${name} dating ${seed}`, scoreReal(dated, truth), `${seconds} s`));
  }
}
