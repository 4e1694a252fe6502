import {
  ENDS,
  evidenceAt,
  fillBand,
  GRAIN_FROM,
  GRAIN_TO,
  grainEvidenceAt,
  MOST_ACROSS,
  type Stretch,
  sumAlong,
} from './band.ts';
import type { Edges } from './edges.ts';
import type { Reduced } from './reduced.ts';

/** A place where a side of the card may run, as a shift of a first guess. */
export interface SideGuess {
  /** Pixels outward of the guess at its first and its second end. */
  readonly from: number;
  readonly to: number;
  /** How far it stands out, 0 to 1: by the share of its length, or taken together if faint. */
  readonly evidence: number;
  /** The most evidence of another guess that lies further out, clear of a side face. */
  readonly beyond: number;
}

/** Pixels to both sides within which guesses are sought, pixels of a side face, guesses at most. */
interface SideTerms {
  readonly reach: number;
  readonly face: number;
  readonly count: number;
}

const LEAST_EVIDENCE = 0.03;

/** As much as grain alone can say. */
const MOST_OF_GRAIN = 0.5;

/** The best evidence at each offset over all slopes, and its slope. */
interface Best {
  readonly evidence: Float64Array;
  readonly slope: Float64Array;
}

const emptyBest = (): Best => ({
  evidence: new Float64Array(MOST_ACROSS),
  slope: new Float64Array(MOST_ACROSS),
});
const ofColour = emptyBest();
const ofGrain = emptyBest();

/** Lines near a stretch that may be the side, the plainest first. */
export function sideGuesses(
  reduced: Reduced,
  edges: Edges,
  stretch: Stretch,
  { reach, face, count }: SideTerms,
): readonly SideGuess[] {
  const across = Math.min(MOST_ACROSS, 2 * Math.round(reach) + 1);
  fillBand(reduced, edges, stretch, across);
  seekSlopes(across, Math.min(16, Math.round(reach * 0.6)));
  const found: Omit<SideGuess, 'beyond'>[] = [];
  for (let m = 0; m < across; m++) {
    const off = m - (across - 1) / 2;
    if (isTop(m, across)) found.push(guessAt(ofColour, m, off));
    if (isGrainTop(m, across)) found.push(guessAt(ofGrain, m, off));
  }
  return found
    .sort((a, b) => b.evidence - a.evidence)
    .map((own) => ({ ...own, beyond: beyondOf(own, found, face) }))
    .slice(0, count);
}

function seekSlopes(across: number, steepest: number): void {
  ofColour.evidence.fill(0);
  ofGrain.evidence.fill(0);
  for (let slope = -steepest; slope <= steepest; slope += Math.abs(slope) < 6 ? 1 : 2) {
    sumAlong(across, slope);
    for (let m = 1; m < across - 1; m++) {
      keepBest(ofColour, m, evidenceAt(m), slope);
      keepBest(ofGrain, m, grainEvidenceAt(m), slope);
    }
  }
}

function keepBest(best: Best, m: number, evidence: number, slope: number): void {
  if (evidence <= (best.evidence[m] as number)) return;
  best.evidence[m] = evidence;
  best.slope[m] = slope;
}

function guessAt(best: Best, m: number, off: number): Omit<SideGuess, 'beyond'> {
  const lean = (best.slope[m] as number) / 2 / (1 - 2 * ENDS);
  const most = best === ofGrain ? MOST_OF_GRAIN : 1;
  return { from: off - lean, to: off + lean, evidence: Math.min(most, best.evidence[m] as number) };
}

function beyondOf(
  { from, to }: { readonly from: number; readonly to: number },
  found: readonly Omit<SideGuess, 'beyond'>[],
  face: number,
): number {
  return Math.max(
    0,
    ...found.filter((other) => other.from + other.to - from - to > 2 * face).map((o) => o.evidence),
  );
}

/** Whether no better guess lies within two pixels, and no equal one before. */
function isTop(m: number, across: number): boolean {
  const own = ofColour.evidence[m] as number;
  return own > LEAST_EVIDENCE && isMost(ofColour, own, m, across, 2);
}

/** Whether the grain changes most here: an edge close by explains it, and is the better guess. */
function isGrainTop(m: number, across: number): boolean {
  const own = ofGrain.evidence[m] as number;
  return (
    own > LEAST_EVIDENCE &&
    isMost(ofGrain, own, m, across, GRAIN_TO - GRAIN_FROM) &&
    isMost(ofColour, Math.min(MOST_OF_GRAIN, own), m, across, GRAIN_TO)
  );
}

function isMost(best: Best, own: number, m: number, across: number, reach: number): boolean {
  for (let at = Math.max(0, m - reach); at <= Math.min(across - 1, m + reach); at++) {
    const other = best.evidence[at] as number;
    if (other > own || (other === own && at < m)) return false;
  }
  return true;
}
