import type { SizeMm } from '../geometry/points.ts';
import type { Reduced } from './reduced.ts';
import type { OutlineAnswer, OutlineTrouble } from './types.ts';

type Trouble = NonNullable<OutlineAnswer['trouble']>;

const WORDS: Record<Exclude<OutlineTrouble, 'other-shape'>, string> = {
  'no-card':
    'No card is seen in this picture. Lay one card on a plain ground of another brightness and photograph it whole, from straight above.',
  'two-cards':
    'More than one card is seen in this picture. Photograph each card by itself, or set the outline of the one that is meant by hand.',
  'cut-off':
    'The card runs out of the picture. Photograph it again with a finger of ground on all four sides.',
  covered:
    'A side or a corner of the card cannot be seen. Take away what lies over it, or set the outline by hand.',
  blurred:
    'The picture is too blurred for the edge of the card to be found. Hold the camera still, let it focus on the card, and photograph it again.',
  'blown-out':
    'Much of the picture is white without detail. Take away the flash or the direct light, or expose for less, and photograph it again.',
  'too-dark': 'The picture is too dark. Give it more light and photograph it again.',
  'too-small':
    'The card is too small in this picture. Come nearer, so that it fills half the width.',
  unsure:
    'Something like a card is seen, but not surely enough to measure it. Photograph it on a plain ground of another brightness, or set the outline by hand.',
};

/** Shares of the pixels, levels and limits at which a picture is called so. Judgement, no source. */
const WHITE = 0.97;
const MUCH_WHITE = 0.3;
const DARK = 0.1;

/** What is wrong with a picture in which no outline is to be trusted, in words for the reader. */
export function troubleOf(
  reduced: Reduced,
  seen: {
    readonly any: boolean;
    readonly two: boolean;
    readonly cutOff: boolean;
    readonly weakestSide: number;
    readonly blur: number;
  },
): Trouble {
  const light = lightOf(reduced);
  const what = whatOf(reduced, light, seen);
  // What is white without detail may be the card's rim or the ground beyond it: nobody can tell.
  const alsoWhite = what === 'cut-off' && light.white > MUCH_WHITE;
  return { what, words: alsoWhite ? `${WORDS[what]} ${WORDS['blown-out']}` : WORDS[what] };
}

/** What is wrong where a card is seen whose sides stand otherwise to each other than those told. */
export function otherShape([width, height]: SizeMm, seen: number): Trouble {
  const told = Math.min(width / height, height / width);
  return {
    what: 'other-shape',
    words: `The card in this picture has sides of about ${seen.toFixed(2)} to 1, and ${width} × ${height} mm would be ${told.toFixed(2)} to 1. Tell its own size, or set the outline by hand.`,
  };
}

function whatOf(
  reduced: Reduced,
  { white, brightness }: ReturnType<typeof lightOf>,
  seen: Parameters<typeof troubleOf>[1],
): keyof typeof WORDS {
  if (seen.two) return 'two-cards';
  if (brightness < DARK) return 'too-dark';
  if (seen.cutOff) return 'cut-off';
  if (white > MUCH_WHITE) return 'blown-out';
  if (Math.min(reduced.width, reduced.height) < 120) return 'too-small';
  if (!seen.any) return 'no-card';
  if (seen.blur >= 5) return 'blurred';
  return seen.weakestSide < 0.25 ? 'covered' : 'unsure';
}

function lightOf({ colours }: Reduced): { white: number; brightness: number } {
  let white = 0;
  let sum = 0;
  for (let i = 0; i < colours.length; i += 3) {
    const least = Math.min(
      colours[i] as number,
      colours[i + 1] as number,
      colours[i + 2] as number,
    );
    if (least > WHITE) white++;
    sum += Math.max(colours[i] as number, colours[i + 1] as number, colours[i + 2] as number);
  }
  const pixels = colours.length / 3;
  return { white: white / pixels, brightness: sum / pixels };
}
