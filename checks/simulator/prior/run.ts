/**
 * Calibration by simulation of dating itself: see `docs/methods/simulation.md`.
 * `npx tsx checks/simulator/prior/run.ts --printings 12 --sources 4 --dossiers 400 --seed 1`
 */
import { parseArgs } from 'node:util';
import { date } from '../../../src/dating/index.ts';
import { calibrate, coverage, REGIONS, type Uniformity } from '../sbc.ts';
import { drawFromPrior } from './draw.ts';

const { values } = parseArgs({
  options: {
    printings: { type: 'string', default: '12' },
    sources: { type: 'string', default: '4' },
    coarse: { type: 'string', default: '0' },
    marked: { type: 'string', default: '0' },
    others: { type: 'string', default: '0' },
    orders: { type: 'string', default: '0' },
    dossiers: { type: 'string', default: '400' },
    seed: { type: 'string', default: '1' },
    bins: { type: 'string', default: '20' },
  },
});

const wish = {
  printings: Number(values.printings),
  sources: Number(values.sources),
  coarse: Number(values.coarse),
  marked: Number(values.marked),
  others: Number(values.others),
  orders: Number(values.orders),
};
const { ranks, levels } = calibrate(
  {
    draw: (seed) => drawFromPrior(wish, seed),
    answer: (data, seed) => date(data, { seed, effort: 'refined' }),
  },
  Number(values.dossiers),
  Number(values.seed),
  Number(values.bins),
);

function show(name: string, { counts, chiSquare, p, distance, pDistance }: Uniformity): string {
  const tests = `chi-square ${chiSquare.toFixed(1)}, p ${p.toFixed(4)}; distance ${distance.toFixed(3)}, p ${pDistance.toFixed(4)}`;
  return `${name}: ${counts.join(' ')}; ${tests}`;
}
console.log(show('ranks', ranks));
console.log(show('levels', levels));
for (const mass of REGIONS) {
  const { share, error } = coverage(levels.ranks, mass);
  console.log(
    `${100 * mass} % regions hold ${(100 * share).toFixed(1)} % of the truths, standard error ${(100 * error).toFixed(1)}`,
  );
}
