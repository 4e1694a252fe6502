import { type Corners, type Hands, NOTHING_SET, type SetByHand, setOn } from '../../bench/index.ts';
import type { BenchSide } from '../../contract/index.ts';
import type { HandSet } from './tasks.ts';

/** A face on which no hand has set anything. */
export const NO_HAND: HandSet = { ...NOTHING_SET, refine: null };

/** What hands have set of a face. */
export function handOn(hands: Hands, side: BenchSide): HandSet {
  return { ...NO_HAND, ...setOn(hands, side) };
}

/** Hands' work with the outline and the frame of one face in the place of what was set there. */
export function handsWith(hands: Hands, side: BenchSide, { corners, frame }: SetByHand): Hands {
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
