import { type CardMap, cardMapOf, type Outline, type PointMm } from '../../src/bench/index.ts';
import type { Drawing, Light, Patch } from './drawn-card.ts';

/** What is printed on a drawn card. */
export interface Print {
  /** From the cut edge to the frame along the mid-lines, in millimetres. */
  readonly borders: {
    readonly left: number;
    readonly right: number;
    readonly top: number;
    readonly bottom: number;
  };
  readonly style: 'plain' | 'line' | 'double';
  /** Clockwise, in degrees. */
  readonly turn: number;
  readonly border: Light;
  readonly frame: Light;
  /** Bands of the art from top to bottom. */
  readonly art: readonly Light[];
}

const SIZE = [63, 88] as const;

/** A usual print: dark border, pale line, art in five bands. */
export const PRINT: Print = {
  borders: { left: 3.1, right: 2.6, top: 2.4, bottom: 3.3 },
  style: 'line',
  turn: 0,
  border: [0.05, 0.12, 0.3],
  frame: [0.75, 0.7, 0.5],
  art: [
    [0.5, 0.1, 0.1],
    [0.1, 0.4, 0.15],
    [0.6, 0.55, 0.2],
    [0.3, 0.1, 0.4],
    [0.05, 0.3, 0.35],
  ],
};

/** Where a small photograph shows the card, tilted and bowed. */
export function photoMap(): CardMap {
  return cardMapOf(
    [
      [61.3, 48.2],
      [421.8, 66.9],
      [398.4, 561.7],
      [35.1, 530.6],
    ],
    SIZE,
    { k1: 0.02, width: 460, height: 610 },
  );
}

/** The patches of a card with this print. */
export function patchesOf(print: Print): readonly Patch[] {
  const card: Patch = { outline: rounded(), light: print.border };
  const at = (inset: number) => frameCorners(print, inset);
  const rings: Patch[] = {
    plain: [],
    line: [
      { outline: at(0), light: print.frame },
      { outline: at(0.3), light: print.border },
      { outline: at(1.2), light: print.frame },
    ],
    double: [
      { outline: at(0), light: print.frame },
      { outline: at(0.4), light: [0.25, 0.03, 0.05] as const },
      { outline: at(1.6), light: print.frame },
    ],
  }[print.style];
  const inset = print.style === 'plain' ? 0 : 2;
  return [card, ...rings, ...bandsOf(print, inset)];
}

/** The outline of a map as if it were found without error, or with that covariance. */
export function outlineOf(map: CardMap, covariance = new Float64Array(81)): Outline {
  const { corners, lens, sizeMm } = map;
  return { corners, lens, sizeMm, aspect: sizeMm[0] / sizeMm[1], p: 1, covariance };
}

/** A drawing of a card with this print, without blur and noise. */
export function cardWith(print: Partial<Print> = {}, map = photoMap()): Drawing {
  return { map, ground: [0.35, 0.3, 0.25], patches: patchesOf({ ...PRINT, ...print }) };
}

type Quad = readonly [PointMm, PointMm, PointMm, PointMm];

/** Corners of the frame moved inwards, such that its sides cross the mid-lines at the borders. */
function frameCorners({ borders, turn }: Print, inset: number): Quad {
  const tan = Math.tan((turn * Math.PI) / 180);
  const inwards = inset * Math.hypot(1, tan);
  const [left, right] = [borders.left + inwards, SIZE[0] - borders.right - inwards];
  const [top, bottom] = [borders.top + inwards, SIZE[1] - borders.bottom - inwards];
  // x = side − tan (y − H/2) and y = side + tan (x − W/2) meet at:
  const corner = (x: number, y: number): PointMm => {
    const u = (x - tan * (y - SIZE[1] / 2) + tan * tan * (SIZE[0] / 2)) / (1 + tan * tan);
    return [u, y + tan * (u - SIZE[0] / 2)];
  };
  return [corner(left, top), corner(right, top), corner(right, bottom), corner(left, bottom)];
}

/** The art in bands, each as high as the others. */
function bandsOf(print: Print, inset: number): Patch[] {
  const [a, b, c, d] = frameCorners(print, inset);
  const between = (p: PointMm, q: PointMm, share: number): PointMm => [
    p[0] + (q[0] - p[0]) * share,
    p[1] + (q[1] - p[1]) * share,
  ];
  return print.art.map((light, i) => ({
    outline: [
      between(a, d, i / print.art.length),
      between(b, c, i / print.art.length),
      between(b, c, (i + 1) / print.art.length),
      between(a, d, (i + 1) / print.art.length),
    ],
    light,
  }));
}

function rounded(radius = 3): readonly PointMm[] {
  const arc = (x: number, y: number, from: number) =>
    Array.from({ length: 17 }, (_, i): PointMm => {
      const angle = ((from + (i * 90) / 16) * Math.PI) / 180;
      return [x + radius * Math.cos(angle), y + radius * Math.sin(angle)];
    });
  const [w, h] = SIZE;
  return [
    ...arc(radius, radius, 180),
    ...arc(w - radius, radius, 270),
    ...arc(w - radius, h - radius, 0),
    ...arc(radius, h - radius, 90),
  ];
}
