import { colourOf } from './colour-of-peak.ts';
import { CHROMATIC, type Densities, nameOf, ORDINARY, separationOf } from './inks.ts';
import { type InkView, inkViewOf, type Peak, peaksIn, stepsApart } from './peaks.ts';
import type { Spectrum } from './spectrum.ts';

/** A pair of peaks that may be a screen, with the ink that its colour speaks for. */
export interface Candidate extends Peak {
  readonly ink: ReturnType<typeof nameOf>;
  readonly colour: Densities;
  /** Cycles a pixel. */
  readonly frequency: number;
  /** Counter-clockwise from the x axis with y up, 0 to under 90. */
  readonly angleDeg: number;
  /** Power of the weaker summit, summed over the channels. */
  readonly power: number;
}

/** What the inks look like one by one, and the pairs of peaks that each shows. */
export interface Separated {
  readonly inks: readonly Densities[];
  readonly views: readonly InkView[];
  readonly candidates: readonly Candidate[];
}

/** A pair of peaks must stand this far above its ring. Judgement, tuned on invented prints. */
const LEAST = 20;

/**
 * The densities separated into inks, twice: with ordinary inks first, then with the colours that
 * the strongest peaks of each ink turned out to have.
 */
export function separate(spectrum: Spectrum, low: number, high: number): Separated {
  const first = separatedBy(spectrum, ORDINARY, low, high);
  const learned = CHROMATIC.map((ink, i) => {
    const own = first.candidates.filter((one) => one.ink === ink);
    const best = own.sort((a, b) => b.lesser - a.lesser)[0];
    return best && best.lesser > 5 * LEAST ? best.colour : (ORDINARY[i] as Densities);
  });
  return separatedBy(spectrum, learned, low, high);
}

function separatedBy(
  spectrum: Spectrum,
  inks: readonly Densities[],
  low: number,
  high: number,
): Separated {
  const views = separationOf(inks).map((weights) => inkViewOf(spectrum, weights));
  const all = views.flatMap((view) => peaksIn(view, low, high, LEAST));
  const candidates = all.map((peak) => candidateOf(peak, spectrum));
  return { inks, views, candidates: withoutDoubles(candidates) };
}

function candidateOf(peak: Peak, spectrum: Spectrum): Candidate {
  const colour = colourOf(spectrum, peak);
  const angle = (Math.atan2(-peak.y, peak.x) * 180) / Math.PI;
  return {
    ...peak,
    colour,
    ink: nameOf(colour),
    frequency: Math.hypot(peak.x, peak.y),
    angleDeg: ((angle % 90) + 90) % 90,
    power: Math.min(...peak.bins.map((bin) => powerAt(spectrum, bin))),
  };
}

/** One entry for what several views show: the one that stands out most. */
function withoutDoubles(candidates: readonly Candidate[]): readonly Candidate[] {
  const kept: Candidate[] = [];
  for (const one of [...candidates].sort((a, b) => b.lesser - a.lesser))
    if (kept.every((other) => stepsApart(other, one) > 1.6)) kept.push(one);
  return kept;
}

function powerAt({ planes: [r, g, b] }: Spectrum, bin: number): number {
  return (r?.[bin] as number) + (g?.[bin] as number) + (b?.[bin] as number);
}
