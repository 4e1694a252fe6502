import { quantileOf } from '../../maths/index.ts';
import type { Defect } from '../defects.ts';
import type { BySide } from '../frame/sides.ts';
import type { PointMm, SizeMm } from '../geometry/points.ts';
import { type CardTones, GROUND_MM, pxOf } from './card-tones.ts';

/** What is known of the print before lines through it are looked for. */
export interface Printed {
  /** Depth to which the border is plain, mm; null where it is not. */
  readonly plainMm: BySide<number | null>;
  readonly rotationDeg: number;
}

/** Lines are compared with what lies so far off on either side. */
const BESIDE_MM = 0.43;
/** In art a departure from what lies beside counts no more than this, so that its own lines are outweighed. */
const MOST_TONE = 0.04;
/** Least noise of a mean in tone, as JPEG smooths small noise away. Judgement, no source. */
const LEAST_TONE = 0.001;
const PIECE_MM = 8;
const LEAST_SDS = 4;
const LEAST_SHARE = 0.6;
/** Frames are up to so wide, inside their outermost line. Judgement, no source. */
const FRAME_MM = 2.8;
/** Of crests so near to each other the strongest is the line. */
const NEAR_MM = 0.57;
const WIDTH_MM = 0.15;
/** Broader ones are stripes that what lies beside no longer shows. Judgement, no source. */
const WIDEST_MM = 0.6;

/**
 * Straight faint lines through the print, parallel to a side, that cross the border at both ends and
 * the art between: printed art ends at the frame. A line that goes on over the ground is a trace of
 * the scanner.
 */
export function printLinesOf(card: CardTones, size: SizeMm, printed: Printed): PrintLines {
  const grey = greyOf(card);
  const [down, across] = (['down', 'across'] as const).map((way) =>
    linesAlong(grey, card, size, printed, way),
  ) as [PrintLines, PrintLines];
  const limits = [down.detectionLimitMm, across.detectionLimitMm];
  return {
    defects: [...down.defects, ...across.defects],
    detectionLimitMm: limits.some((limit) => limit === null)
      ? null
      : Math.max(...(limits as number[])),
  };
}

/** Lines through the print, and what the picture could not show of them. */
export interface PrintLines {
  readonly defects: readonly Defect[];
  /** Width of the narrowest line a tenth lighter or darker than the border; null where one way shows none. */
  readonly detectionLimitMm: number | null;
}

function greyOf({ tones }: CardTones): Float32Array {
  const grey = new Float32Array(tones.length / 3);
  for (let i = 0, j = 0; i < grey.length; i++, j += 3)
    grey[i] = ((tones[j] as number) + (tones[j + 1] as number) + (tones[j + 2] as number)) / 3;
  return grey;
}

type Way = 'down' | 'across';

/** Mean departure from what lies beside, for each place across the lines, over one piece of them. */
interface Piece {
  readonly values: Float64Array;
  readonly sd: number;
  /** Mean tone of the piece. */
  readonly tone: number;
}

function linesAlong(
  grey: Float32Array,
  card: CardTones,
  size: SizeMm,
  { plainMm, rotationDeg }: Printed,
  way: Way,
): PrintLines {
  const down = way === 'down';
  const { left, right, top, bottom } = plainMm;
  const [near, far, first, last] = down ? [left, right, top, bottom] : [top, bottom, left, right];
  if (first === null || last === null) return { defects: [], detectionLimitMm: null };
  const { view, pxPerMm } = card;
  const [wide, long] = down ? size : [size[1], size[0]];
  const lean = (down ? -1 : 1) * Math.tan((rotationDeg * Math.PI) / 180);
  const strides = down ? ([1, view.width] as const) : ([view.width, 1] as const);
  const inner = [(near ?? 0) + FRAME_MM, wide - (far ?? 0) - FRAME_MM] as const;
  const piece = (from: number, to: number, most = 1) =>
    pieceOf(grey, strides, { inner, long, lean, most, pxPerMm }, [from, to]);
  const ends = [piece(0.6, first), piece(long - last, long - 0.6)] as const;
  const halves = [
    ...halved(0.6, first).map(([from, to]) => piece(from, to)),
    ...halved(long - last, long - 0.6).map(([from, to]) => piece(from, to)),
  ];
  const grounds = [piece(-1.8, -0.7), piece(long + 0.7, long + 1.8)] as const;
  const count = Math.max(1, Math.round((long - first - last) / PIECE_MM));
  const step = (long - first - last) / count;
  const art = Array.from({ length: count }, (_, i) =>
    piece(first + i * step, first + (i + 1) * step, MOST_TONE),
  );
  const defects = crestsOf(ends, pxOf(card, NEAR_MM)).flatMap((at) => {
    const seen = { ends, grounds, art, at };
    const share = shareOf(seen);
    if (share < LEAST_SHARE || !runsThrough(ends, halves, at)) return [];
    const across = inner[0] + at / pxPerMm;
    const point = (along: number): PointMm => {
      const u = across + lean * (along - long / 2);
      return down ? [u, along] : [along, u];
    };
    return [defectOf([point(0), point(long)], long, probabilityOf(seen, share))];
  });
  return { defects, detectionLimitMm: limitOf(ends, pxPerMm) };
}

/** Light a tenth apart is a twentieth apart in tone; of a narrow line half reaches the middle pixel. */
function limitOf(ends: readonly [Piece, Piece], pxPerMm: number): number | null {
  const width = Math.max(
    ...ends.map(({ sd, tone }) => (LEAST_SDS * sd) / (0.5 * 0.05 * tone * pxPerMm)),
  );
  return width > WIDEST_MM ? null : Math.max(width, 0.05);
}

function halved(from: number, to: number): readonly (readonly [number, number])[] {
  return [
    [from, (from + to) / 2],
    [(from + to) / 2, to],
  ];
}

/** Whether both halves of each end show the line: a speck or a grain of dust lies in one alone. */
function runsThrough(ends: readonly [Piece, Piece], halves: readonly Piece[], at: number): boolean {
  return halves.every(({ values }, k) => {
    const whole = ends[k >> 1 === 0 ? 0 : 1].values[at] as number;
    return (values[at] as number) / whole > 0.4;
  });
}

interface Across {
  readonly inner: readonly [number, number];
  readonly long: number;
  readonly lean: number;
  /** Most that one departure counts. */
  readonly most: number;
  readonly pxPerMm: number;
}

function pieceOf(
  grey: Float32Array,
  [over, along]: readonly [number, number],
  { inner, long, lean, most, pxPerMm }: Across,
  [fromMm, toMm]: readonly [number, number],
): Piece {
  const at = (mm: number) => Math.round((mm + GROUND_MM) * pxPerMm - 0.5);
  const aside = over * pxOf({ pxPerMm }, BESIDE_MM);
  const start = at(inner[0]);
  const count = Math.max(0, at(inner[1]) - start);
  const values = new Float64Array(count);
  const [from, to] = [at(fromMm), at(toMm)];
  const middle = at(long / 2);
  let sum = 0;
  for (let v = from; v < to; v++) {
    let i = v * along + (start + Math.round(lean * (v - middle))) * over;
    for (let u = 0; u < count; u++, i += over) {
      const here =
        ((grey[i - over] as number) + 2 * (grey[i] as number) + (grey[i + over] as number)) / 4;
      const beside = ((grey[i - aside] as number) + (grey[i + aside] as number)) / 2;
      const off = Math.max(-most, Math.min(most, here - beside));
      values[u] = (values[u] as number) + off;
      sum += grey[i] as number;
    }
  }
  const rows = Math.max(1, to - from);
  for (let u = 0; u < count; u++) values[u] = (values[u] as number) / rows;
  const sd = Math.max(1.4826 * quantileOf(values.map(Math.abs), 0.5), LEAST_TONE);
  return { values, sd, tone: Math.max(sum / Math.max(1, rows * count), LEAST_TONE) };
}

/** Places where both ends stand out with one sign, the strongest of those up to `near` pixels off. */
function crestsOf([one, two]: readonly [Piece, Piece], near: number): readonly number[] {
  const scores = one.values.map((value, u) => {
    const other = two.values[u] as number;
    if (value * other <= 0) return 0;
    return Math.min(Math.abs(value) / one.sd, Math.abs(other) / two.sd);
  });
  return [...scores.keys()].filter((u) => {
    const here = scores[u] as number;
    if (here < LEAST_SDS) return false;
    for (let k = Math.max(0, u - near); k <= Math.min(scores.length - 1, u + near); k++)
      if ((scores[k] as number) > here || ((scores[k] as number) === here && k < u)) return false;
    return true;
  });
}

interface Seen {
  readonly ends: readonly [Piece, Piece];
  readonly grounds: readonly [Piece, Piece];
  readonly art: readonly Piece[];
  readonly at: number;
}

/** The share of the pieces of the art that show the line as the border does. */
function shareOf({ ends, art, at }: Seen): number {
  const values = ends.map((end) => end.values[at] as number) as [number, number];
  const least = 0.25 * Math.min(Math.abs(values[0]), Math.abs(values[1]));
  const sign = Math.sign(values[0]);
  const shown = art.filter((piece) => {
    const value = sign * (piece.values[at] as number);
    return value > least && value > piece.sd;
  });
  return shown.length / art.length;
}

function probabilityOf({ ends, grounds, at }: Seen, share: number): number {
  const sds = Math.min(...ends.map(({ values, sd }) => Math.abs(values[at] as number) / sd));
  const level = ends.reduce((sum, { values }) => sum + (values[at] as number), 0) / 2;
  const onGround = grounds.filter(
    ({ values, sd }) =>
      (values[at] as number) / level > 0.4 && Math.abs(values[at] as number) > 3 * sd,
  ).length;
  const score =
    -1.5 + 0.6 * (Math.min(sds, 12) - LEAST_SDS) + 4 * (share - LEAST_SHARE) - 2.5 * onGround;
  return 1 / (1 + Math.exp(-score));
}

function defectOf(points: readonly [PointMm, PointMm], lengthMm: number, p: number): Defect {
  const [[x0, y0], [x1, y1]] = points;
  return {
    kind: 'print-line',
    centreMm: [(x0 + x1) / 2, (y0 + y1) / 2],
    boxMm: [Math.min(x0, x1), Math.min(y0, y1), Math.max(x0, x1), Math.max(y0, y1)],
    areaMm2: lengthMm * WIDTH_MM,
    lengthMm,
    polygonMm: points,
    p,
    sd: { centreMm: 0.1, areaMm2: 0.5 * lengthMm * WIDTH_MM, lengthMm: 2 },
    seenFrom: 'still',
  };
}
