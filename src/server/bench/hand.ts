import type { Corners, Hands } from '../../bench/index.ts';
import type { BenchSide } from '../../contract/index.ts';
import type { HandSet } from './tasks.ts';

/** A face on which no hand has set anything. */
export const NO_HAND: HandSet = { corners: null, frame: null, refine: null };

/** What hands have set of a face. */
export function handOn({ corners, frames }: Hands, side: BenchSide): HandSet {
  return { ...NO_HAND, corners: corners[side] ?? null, frame: frames[side] ?? null };
}

/** Hands' work with the outline and the frame of one face in the place of what was set there. */
export function handsWith(
  hands: Hands,
  side: BenchSide,
  { corners, frame }: Pick<HandSet, 'corners' | 'frame'>,
): Hands {
  return {
    ...hands,
    corners: withSide(hands.corners, side, corners),
    frames: withSide(hands.frames, side, frame),
  };
}

function withSide(all: Hands['corners'], side: BenchSide, set: Corners | null): Hands['corners'] {
  const { [side]: _, ...others } = all;
  return set ? { ...others, [side]: set } : others;
}
