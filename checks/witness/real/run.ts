// Prints how often days agree with the makers' own. Arguments, in any order: seeds (default 1 2 3),
// names of sets (default all), `first` for the quick answer in place of the refined one:
//   npx tsx checks/witness/real/run.ts node first 1
import { date } from '../../../src/dating/index.ts';
import { majority } from '../../simulator/majority.ts';
import { loadReal, REAL_SETS } from './load.ts';
import { type RealScore, scoreReal } from './score.ts';

const wishes = process.argv.slice(2);
const seeds = wishes.map(Number).filter(Number.isInteger);
const sets = REAL_SETS.filter((name) => wishes.includes(name));
const effort = wishes.includes('first') ? 'first' : 'refined';

function line(name: string, score: RealScore, note = ''): string {
  const percent = (share: number) => `${(100 * share).toFixed(1)} %`.padStart(8);
  const log = score.log.toFixed(2).padStart(8);
  const shares = [score.covered, score.claimed, score.p_best].map(percent).join('');
  return `${name.padEnd(22)}${percent(score.exact)}${log}${shares}  ${note}`;
}

console.log('set, engine              exact     log covered claimed  p_best');
for (const name of sets.length > 0 ? sets : REAL_SETS) {
  const { evidence, truth } = loadReal(name);
  console.log(line(`${name} majority`, scoreReal(majority(evidence), truth)));
  for (const seed of seeds.length > 0 ? seeds : [1, 2, 3]) {
    const began = performance.now();
    const dated = date(evidence, { seed, effort });
    const seconds = ((performance.now() - began) / 1000).toFixed(1);
    console.log(line(`${name} dating ${seed} ${effort}`, scoreReal(dated, truth), `${seconds} s`));
  }
}
