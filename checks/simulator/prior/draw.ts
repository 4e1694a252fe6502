import { type Claim, dayOf, type Evidence } from '../../../src/evidence/index.ts';
import { type Chance, seeded } from '../chance.ts';
import { written } from '../dates.ts';
import { drawDays, erasOf } from './days.ts';
import { type Design, designOf, type Wish } from './design.ts';
import { drawKin } from './kin.ts';
import { drawLags, lagsShow } from './lags.ts';
import { PEN } from './numbers.ts';
import { drawShares } from './rates.ts';
import type { Said } from './said.ts';
import { type Drawn, say } from './statements.ts';

/** The years in which releases fall: many more than three, by which the engine widens them. */
const FIRST = dayOf(1960, 1, 1);
const LAST = dayOf(1999, 12, 31);

/** A dossier drawn from the prior, with what it was drawn from. */
export interface FromPrior {
  readonly data: Evidence;
  readonly days: ReadonlyMap<string, number>;
  readonly design: Design;
  readonly drawn: Drawn;
  readonly said: readonly Said[];
}

/**
 * A dossier drawn from the prior that `docs/methods/dating.md` describes. Where a value comes out
 * that the model holds to be impossible, the whole dossier is drawn again: what is kept is then in
 * proportion to prior times likelihood, as the engine has them.
 */
export function drawFromPrior(wish: Wish, seed: number): FromPrior {
  const chance = seeded(seed);
  for (;;) {
    const design = designOf(chance, wish);
    const days = drawDays(chance, design.releases, design.slots, FIRST, LAST);
    const lags = drawLags(chance, design.sources);
    const kin = drawKin(chance, design);
    const sharesOf = drawShares(chance, design, erasOf(days), lags);
    const drawn = { days, lags, kin, sharesOf };
    const said = say(chance, design, drawn);
    const tied = design.known.some(([a, b]) => days[a.index] === days[b.index]);
    if (said === undefined || tied || !lagsShow(lags, said)) continue;
    return {
      data: evidenceOf(chance, design, drawn, said),
      days: byPrinting(design, days),
      design,
      drawn,
      said,
    };
  }
}

function byPrinting({ releases }: Design, days: readonly number[]): Map<string, number> {
  return new Map(
    releases.flatMap(({ printings, index }) => printings.map((id) => [id, days[index]!] as const)),
  );
}

function evidenceOf(
  chance: Chance,
  design: Design,
  { days }: Drawn,
  said: readonly Said[],
): Evidence {
  const claims = said.flatMap((one) => rowsOf(chance, design, one));
  const orders = design.known.map(([a, b], i) => {
    const [earlier, later] = days[a.index]! < days[b.index]! ? [a, b] : [b, a];
    return { row: i + 2, earlier: earlier.printings[0]!, later: later.printings[0]! };
  });
  return {
    printings: design.printings,
    products: design.products,
    contents: [],
    sources: design.sources,
    claims: claims.map((claim, i) => ({ ...claim, row: i + 2 })),
    orders,
  };
}

/** A row for each printing of the release; where there are several, one may be a slip of the pen. */
function rowsOf(chance: Chance, { sources }: Design, { slot, day }: Said): Omit<Claim, 'row'>[] {
  const { printings } = slot.release;
  return printings.map((printing) => {
    const slips = printings.length > 1 && slot.precision === 'day' && chance.yes(PEN.chance);
    const by = slips ? chance.whole(1, PEN.values / 2) * (chance.yes(0.5) ? 1 : -1) : 0;
    const date = written(day + by, slot.precision, slot.mark);
    return {
      printings: [printing],
      source: sources[slot.source]!.id,
      property: slot.property,
      value: date.text,
      date,
    };
  });
}
