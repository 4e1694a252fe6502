import { type Chance, redraw, type Spread } from '../../maths/index.ts';
import type { Layout } from './layout.ts';
import type { State } from './state.ts';

/** Spread of the mean level before any sale is seen: a factor of seven. Judgement, no source. */
const MEAN_SD = 2;

/**
 * Draws what is expected of each printing before its own sales: a mean, an effect of each word that
 * it shares with others, and one of how many are graded.
 */
export function drawExpected(layout: Layout, state: State, random: Chance): void {
  const { printings, factors, plenty } = layout;
  const { level, expected, spreads } = state;
  const one = 1 / spreads.level.sd ** 2;
  const move = (by: (p: number) => number) => {
    for (let p = 0; p < printings; p++) (expected[p] as number) += by(p);
  };
  let off = 0;
  for (let p = 0; p < printings; p++)
    off += (level[p] as number) - (expected[p] as number) + state.mean;
  const sure = one * printings + 1 / MEAN_SD ** 2;
  const mean =
    (one * off + layout.before / MEAN_SD ** 2) / sure + random.normal() / Math.sqrt(sure);
  move(() => mean - state.mean);
  state.mean = mean;

  let xx = 0;
  let xy = 0;
  for (let p = 0; p < printings; p++) {
    const x = plenty[p] as number;
    xx += x * x;
    xy += x * ((level[p] as number) - (expected[p] as number) + state.plenty * x);
  }
  if (xx > 0) {
    const all = one * xx + 1 / spreads.plenty.sd ** 2;
    const drawn = (one * xy) / all + random.normal() / Math.sqrt(all);
    move((p) => (drawn - state.plenty) * (plenty[p] as number));
    state.plenty = drawn;
    redraw(spreads.plenty, random, drawn * drawn, 1);
  }
  for (const [f, factor] of factors.entries()) {
    const effects = state.effects[f] as Float64Array;
    const sums = new Float64Array(factor.levels);
    const counts = new Float64Array(factor.levels);
    for (let p = 0; p < printings; p++) {
      const at = factor.level[p] as number;
      (counts[at] as number)++;
      (sums[at] as number) +=
        (level[p] as number) - (expected[p] as number) + (effects[at] as number);
    }
    const spread = spreads.effects[f] as Spread;
    const change = new Float64Array(factor.levels);
    let squares = 0;
    for (let at = 0; at < factor.levels; at++) {
      const all = one * (counts[at] as number) + 1 / spread.sd ** 2;
      const drawn = (one * (sums[at] as number)) / all + random.normal() / Math.sqrt(all);
      change[at] = drawn - (effects[at] as number);
      effects[at] = drawn;
      squares += drawn * drawn;
    }
    move((p) => change[factor.level[p] as number] as number);
    redraw(spread, random, squares, factor.levels);
  }
}
