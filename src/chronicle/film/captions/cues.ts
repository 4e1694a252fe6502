import { wordsIn } from '../script/reading-time.ts';
import { sayAloud } from '../spoken/index.ts';
import type { Cut, Take } from '../types.ts';
import { brokenText } from './break.ts';
import { FASTEST } from './limits.ts';

/** One caption: seconds from the beginning, and one or two lines of text. */
export interface Cue {
  /** `LINE` or `LINE-NUMBER`. */
  readonly id: string;
  readonly from: number;
  readonly to: number;
  readonly lines: readonly string[];
}

/**
 * The captions of a cut, in order of time: each line's time is shared by how long its parts are said.
 * What was given no time is left out.
 */
export function cuesOf({ script, takes }: Cut): readonly Cue[] {
  return takes
    .flatMap((take) => cuesOfTake(take, script.language))
    .filter(({ from, to }) => to > from);
}

function cuesOfTake({ line, scene, from, to }: Take, language: string): Cue[] {
  const parts = brokenText(line.text, language);
  const weights = parts.map((lines) =>
    Math.max(0.5, wordsIn(sayAloud(lines.join(' '), language, scene.names), language)),
  );
  const all = weights.reduce((sum, weight) => sum + weight, 0);
  let before = 0;
  return parts.map((lines, i) => {
    const start = from + ((to - from) * before) / all;
    before += weights[i] ?? 0;
    const end = from + ((to - from) * before) / all;
    const id = parts.length === 1 ? line.id : `${line.id}-${i + 1}`;
    return { id, from: thousandth(start), to: thousandth(end), lines };
  });
}

/** Captions that stand for a shorter time than reading them takes at 180 words a minute (`bbc:2018`). */
export function hurriedCues(cues: readonly Cue[], language: string): readonly Cue[] {
  return cues.filter(({ from, to, lines }) => {
    const least = (wordsIn(lines.join(' '), language) / FASTEST) * 60;
    return to - from < least - 0.001;
  });
}

function thousandth(seconds: number): number {
  return Math.round(seconds * 1000) / 1000;
}
