import type { Reduced } from '../../outline/reduced.ts';

/** A place of one colour in a reduced picture that is about a parallelogram. */
export interface EvenPlace {
  /** Its middle, in pixels of the reduced picture. */
  readonly at: readonly [x: number, y: number];
  /** Root of its area: the side, were it a square. */
  readonly side: number;
}

/** Steps of colour (root of light, 0 to 1) across two pixels that part places, each tried. */
const PARTED_BY = [0.018, 0.035, 0.07] as const;

/** Least pixels of a place, and the largest share of the picture that one may take. */
const LEAST = 30;
const LARGEST = 0.1;

/** Area over that of the parallelogram with the same second moments (1), and longest over short side. */
const FILLED = [0.86, 1.05] as const;
const LONGEST = 2.6;

/**
 * Places of one colour that are about parallelograms, wherever their rims show at one of several
 * contrasts; those that reach the picture's rim are left out, since they may go on beyond it.
 */
export function evenPlaces(picture: Reduced): readonly EvenPlace[] {
  const steps = stepsOf(picture);
  const found: (EvenPlace & { readonly filled: number })[] = [];
  for (const limit of PARTED_BY)
    for (const place of placesBelow(steps, limit, picture)) {
      const same = found.findIndex(({ at, side }) => apart(at, place.at) < 0.35 * side);
      if (same < 0) found.push(place);
      else if (misfit(place) < misfit(found[same] as typeof place)) found[same] = place;
    }
  return found;
}

const misfit = ({ filled }: { readonly filled: number }) => Math.abs(Math.log(filled));

function apart([x, y]: EvenPlace['at'], [u, v]: EvenPlace['at']): number {
  return Math.hypot(x - u, y - v);
}

/** The largest step of any channel across each pixel, from its left to its right and down. */
function stepsOf({ width, height, colours }: Reduced): Float32Array {
  const steps = new Float32Array(width * height).fill(1);
  for (let y = 1; y < height - 1; y++)
    for (let x = 1; x < width - 1; x++) {
      const i = y * width + x;
      let most = 0;
      for (let c = 0; c < 3; c++) {
        const k = 3 * i + c;
        const across = Math.abs((colours[k + 3] as number) - (colours[k - 3] as number));
        const down = (colours[k + 3 * width] as number) - (colours[k - 3 * width] as number);
        most = Math.max(most, across, Math.abs(down));
      }
      steps[i] = most;
    }
  return steps;
}

/** Connected places whose steps all stay below a limit, filtered by shape. */
function placesBelow(steps: Float32Array, limit: number, { width, height }: Reduced) {
  const seen = new Uint8Array(width * height);
  const stack = new Int32Array(width * height);
  const places: (EvenPlace & { readonly filled: number })[] = [];
  for (let start = 0; start < steps.length; start++) {
    if (seen[start] || (steps[start] as number) >= limit) continue;
    const place = shapeOf(flooded(steps, limit, width, start, seen, stack), width, height);
    if (place) places.push(place);
  }
  return places;
}

/** The pixels reached from a start over steps below the limit; none of them is on the rim. */
function flooded(
  steps: Float32Array,
  limit: number,
  width: number,
  start: number,
  seen: Uint8Array,
  stack: Int32Array,
): Int32Array {
  let [top, done] = [1, 0];
  stack[0] = start;
  seen[start] = 1;
  // The stack keeps what was taken from it below `done`, so that it ends as the list of pixels.
  while (done < top) {
    const i = stack[done++] as number;
    for (const next of [i - 1, i + 1, i - width, i + width]) {
      if (seen[next] || !((steps[next] as number) < limit)) continue;
      seen[next] = 1;
      stack[top++] = next;
    }
  }
  return stack.subarray(0, top);
}

function shapeOf(pixels: Int32Array, width: number, height: number) {
  const n = pixels.length;
  if (n < LEAST || n > LARGEST * width * height) return null;
  let [sx, sy] = [0, 0];
  for (const i of pixels) {
    sx += i % width;
    sy += Math.floor(i / width);
  }
  const [mx, my] = [sx / n, sy / n];
  let [xx, xy, yy] = [0, 0, 0];
  for (const i of pixels) {
    const x = (i % width) - mx;
    const y = Math.floor(i / width) - my;
    if (Math.abs(mx + x - width / 2) > width / 2 - 2.5) return null;
    if (Math.abs(my + y - height / 2) > height / 2 - 2.5) return null;
    xx += x * x;
    xy += x * y;
    yy += y * y;
  }
  // A parallelogram's area is twelve times the root of its second moments' determinant.
  const filled = n / (12 * Math.sqrt(Math.max(1e-9, (xx * yy - xy * xy) / (n * n))));
  const [half, off] = [(xx + yy) / 2, Math.hypot((xx - yy) / 2, xy)];
  const long = Math.sqrt((half + off) / Math.max(1e-9, half - off));
  if (filled < FILLED[0] || filled > FILLED[1] || long > LONGEST) return null;
  // A pixel on each side is lost to the step across the rim.
  return { at: [mx, my] as const, side: Math.sqrt(n) + 2, filled };
}
