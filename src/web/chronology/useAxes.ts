import { useCallback, useMemo, useState } from 'react';
import { extent, panned, REACHES, zoomed } from '../draw/index.ts';
import { type DatedPrinting, daysToShow } from '../view/index.ts';

/** Both axes of the chronology and what can be done to them. */
export interface Axes {
  /** First and last day of the long axis, with fractions while zoomed. */
  readonly span: readonly [number, number];
  readonly whole: boolean;
  /** Days on either side of the best day in the close-up. */
  readonly reach: number;
  /** Zooms the long axis by a factor, about a share of its width (a half where none is given). */
  readonly zoom: (factor: number, share?: number) => void;
  /** Moves the long axis by a share of its width. */
  readonly pan: (share: number) => void;
  /** Takes the next nearer (-1) or wider (1) close-up. */
  readonly closer: (step: -1 | 1) => void;
  readonly reset: () => void;
}

const FIRST_REACH = 56;

/** The axes over everything dated; they begin with the whole of it, and eight weeks either side. */
export function useAxes(dated: Iterable<DatedPrinting>): Axes {
  const limits = useMemo(() => extent(daysToShow(dated)), [dated]);
  const [chosen, setChosen] = useState<readonly [number, number]>();
  const [reach, setReach] = useState(FIRST_REACH);
  const span = chosen ?? limits;
  const zoom = useCallback(
    (factor: number, share = 0.5) =>
      setChosen((now = limits) => zoomed(now, factor, now[0] + share * (now[1] - now[0]), limits)),
    [limits],
  );
  const pan = useCallback(
    (share: number) => setChosen((now = limits) => panned(now, share * (now[1] - now[0]), limits)),
    [limits],
  );
  const closer = useCallback((step: -1 | 1) => {
    setReach((now) => {
      const at = REACHES.findIndex((known) => known >= now);
      return REACHES[Math.max(0, Math.min(REACHES.length - 1, at + step))] ?? now;
    });
  }, []);
  const reset = useCallback(() => {
    setChosen(undefined);
    setReach(FIRST_REACH);
  }, []);
  return {
    span,
    whole: span[0] === limits[0] && span[1] === limits[1],
    reach,
    zoom,
    pan,
    closer,
    reset,
  };
}
