import type { Evidence } from '../evidence/index.ts';
import { factsOf, sequencesOf } from './answer.ts';
import { releasesOf } from './events.ts';
import { middleOf, orderEvents } from './sequence.ts';
import type { DayWeights } from './spread.ts';
import type { DatedPrinting, Dating } from './types.ts';
import { sayWhy } from './why.ts';

/** The answer where no claim bounds any day. */
export function undated(evidence: Evidence, seed: number, effort: 'first' | 'refined'): Dating {
  const printings = evidence.printings.map(
    ({ id }): DatedPrinting => ({
      id,
      best: null,
      edtf: '/',
      p_best: 0,
      interval95: null,
      p_interval: 0,
      days: [],
      state: 'open',
      modes: [],
      together: [],
      claims: [],
      why: sayWhy(evidence, { day: 0, p: 0, from: 0, to: 0, state: 'open', claims: [] }),
    }),
  );
  const sources = evidence.sources.map(({ id }) => ({
    id,
    accuracy: null,
    accuracy95: null,
    claims: 0,
    derives: [],
    habits: [],
  }));
  const { events, orders } = releasesOf(evidence);
  const flat = events.map((): DayWeights => ({ days: Int32Array.of(0), p: Float64Array.of(1) }));
  const undatedOrder = orderEvents(flat.map(middleOf), orders).filter(
    (e) => events[e]!.members.length > 0,
  );
  const idsOf = (e: number) => events[e]!.members.map((i) => evidence.printings[i]!.id);
  return {
    printings,
    order: undatedOrder.flatMap(idsOf),
    first: [],
    sequences: sequencesOf(undatedOrder, { weights: flat, facts: factsOf(orders), idsOf }).filter(
      ({ stated }) => stated,
    ),
    sources,
    weekdays: [],
    leads: [],
    monte_carlo_error: 0,
    seed,
    effort,
  };
}
