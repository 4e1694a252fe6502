import type { BorderStrip } from './border-strip.ts';
import type { Whiteness } from './whiteness.ts';

/** A border with less way to white than this is pale: bare board there is no lighter, but of another tone. */
const PALE = 0.2;
/** Change of light, as a share of the border's, that counts as bare all through. Judgement, no source. */
const BARE = 0.25;

/**
 * Whiteness with the places beside a pale border read otherwise: any change from the border's colour
 * counts, as fibres are greyer or yellower than white print. Grime of an edge looks alike.
 */
export function onPaleBorder(
  { rays, rows, values }: BorderStrip,
  border: readonly Float32Array[],
  { share, rest, contrast }: Whiteness,
): Whiteness {
  const [shares, rests] = [share.slice(), rest.slice()];
  for (let column = 0; column < rays.length; column++) {
    if ((contrast[column] as number) >= PALE) continue;
    const [r, g, b] = border.map((light) => light[column] as number) as [number, number, number];
    const whole = BARE * Math.hypot(r, g, b);
    for (let i = column * rows; i < (column + 1) * rows; i++) {
      const red = (values[0][i] as number) - r;
      const green = (values[1][i] as number) - g;
      const blue = (values[2][i] as number) - b;
      shares[i] = Math.sqrt(red * red + green * green + blue * blue) / whole;
      rests[i] = 0;
    }
  }
  return { share: shares, rest: rests, contrast };
}
