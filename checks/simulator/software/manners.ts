import type { SourceKind } from '../../../src/evidence/index.ts';
import type { Chance } from '../chance.ts';

/** The days from release to the day that a source states, at a share of the dossier's years. */
export type Manner = (share: number) => number;

export interface Teller {
  readonly id: string;
  readonly kind: SourceKind;
  /** Name of its manner, for the truth. */
  readonly how: string;
  readonly lag: Manner;
  readonly coverage: number;
}

const KINDS: readonly SourceKind[] = [
  'registration-record',
  'store-listing',
  'archive-snapshot',
  'publisher-database',
  'checklist',
];

/** Nearly always the day, else a day beside it. */
function exact(chance: Chance): Manner {
  const right = chance.between(0.75, 0.99);
  return () => (chance.yes(right) ? 0 : chance.pick([-1, 1, 1, 2]));
}

/** One lag for all but a few rows. */
function constant(chance: Chance): Manner {
  const lag = chance.pick([-7, -3, -2, -1, 1, 1, 1, 2, 3, 4, 5, 7, 14]);
  const share = chance.between(0.6, 0.98);
  return () => (chance.yes(share) ? lag : chance.whole(-2, 8));
}

/** Some days behind, as when rows are taken in by hand. */
function behind(chance: Chance): Manner {
  const at_once = chance.between(0.1, 0.6);
  const usual = chance.between(1, 15);
  return () => (chance.yes(at_once) ? 0 : Math.ceil(usual * chance.gamma(1)));
}

/** A lag that grows or shrinks over the years. */
function drifting(chance: Chance): Manner {
  const [from, to] = [chance.between(-2, 8), chance.between(-2, 8)];
  const unsteady = chance.between(0, 0.3);
  return (share) =>
    Math.round(from + (to - from) * share) + (chance.yes(unsteady) ? chance.whole(-1, 2) : 0);
}

/** States plans as if they had come true. */
function planned(chance: Chance): Manner {
  const onTime = chance.between(0.1, 0.6);
  const usual = chance.between(2, 30);
  return () => (chance.yes(onTime) ? 0 : -Math.ceil(usual * chance.gamma(1)));
}

/** Some of its rows are of another market, where everything came later. */
function elsewhere(chance: Chance): Manner {
  const share = chance.between(0.2, 0.7);
  const usual = chance.between(5, 120);
  return () => (chance.yes(share) ? Math.ceil(usual * (0.3 + chance.gamma(1))) : 0);
}

const MANNERS = { exact, constant, behind, drifting, planned, elsewhere } as const;

/** Two to five sources, each with a manner of its own; at least one is exact or only behind. */
export function tellers(chance: Chance): Teller[] {
  const names = Object.keys(MANNERS) as (keyof typeof MANNERS)[];
  const count = chance.whole(2, 5);
  return Array.from({ length: count }, (_, i) => {
    const how = i === 0 ? chance.pick(['exact', 'behind'] as const) : chance.pick(names);
    return {
      id: `s${i + 1}`,
      kind: chance.pick(KINDS),
      how,
      lag: MANNERS[how](chance),
      coverage: chance.between(0.6, 1),
    };
  });
}
