import { dayFrom } from '../../evidence/index.ts';
import type { Closeup, DayMass, Markable } from '../draw/index.ts';
import type { DatedPrinting } from './book.ts';

/** A printing's answer with its days as numbers, ready for drawing. */
export interface Drawn {
  readonly days: readonly DayMass[];
  /** Middle of the close-up; undefined where nothing bounds the day. */
  readonly centre: number | undefined;
  readonly claims: readonly Markable[];
  /** One day holds at least half. */
  readonly dayKnown: boolean;
}

export type { Closeup };

const known = new WeakMap<DatedPrinting, Drawn>();
const NOTHING: Drawn = { days: [], centre: undefined, claims: [], dayKnown: false };

/** Turns ISO days into day numbers, once for each answer. */
export function drawnOf(dated: DatedPrinting | undefined): Drawn {
  if (!dated) return NOTHING;
  const before = known.get(dated);
  if (before) return before;
  const drawn: Drawn = {
    days: dated.days.map(([day, p]) => [dayFrom(day), p]),
    dayKnown: dated.state === 'day',
    centre: dated.best === null ? undefined : dayFrom(dated.best),
    claims: dated.claims.map(({ property, slip, span }) => ({
      property,
      slip,
      span: [
        span[0] === null ? null : dayFrom(span[0]),
        span[1] === null ? null : dayFrom(span[1]),
      ],
    })),
  };
  known.set(dated, drawn);
  return drawn;
}

/** Every day that the long axis has to hold: where probability lies, and what claims name. */
export function daysToShow(all: Iterable<DatedPrinting>): readonly number[] {
  const days: number[] = [];
  for (const dated of all) {
    const drawn = drawnOf(dated);
    const first = drawn.days[0];
    const last = drawn.days.at(-1);
    if (first && last && dated.state !== 'open') days.push(first[0], last[0]);
    for (const { span } of drawn.claims) {
      for (const day of span) if (day !== null) days.push(day);
    }
  }
  return days;
}
