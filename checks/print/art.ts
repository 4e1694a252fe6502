import type { Chance } from '../../src/maths/index.ts';

/** Coverage, 0 to 1, of cyan, magenta, yellow and black at a place in millimetres. */
export type Art = (x: number, y: number) => readonly number[];

/** The kinds of invented art. */
export const ARTS = ['mosaic', 'rings', 'hatching', 'weave', 'sky'] as const;

/** Invented art of a kind within a border of plain bands on the left. */
export function artOf(kind: (typeof ARTS)[number], widthMm: number, chance: Chance): Art {
  const inner = INNER[kind](widthMm, chance);
  const edges = [1, 2.2, 3, 3.4].map((mm) => mm * (0.4 + 0.8 * chance.uniform()));
  const bands = [tint(chance, 0.25), tint(chance, 0.7), [0, 0, 0.02, 0], [0, 0, 0, 0.8]];
  return (x, y) => {
    const band = edges.findIndex((edge) => x < edge);
    return band < 0 ? inner(x, y) : (bands[band] as readonly number[]);
  };
}

const INNER: Record<(typeof ARTS)[number], (widthMm: number, chance: Chance) => Art> = {
  mosaic,
  rings: (widthMm, chance) => {
    const [cx, cy] = [chance.uniform() * widthMm, chance.uniform() * widthMm];
    const pitch = 0.12 + 1.2 * chance.uniform() ** 2;
    const [ground, ring] = [tint(chance, 0.6), tint(chance, 0.4)];
    const width = 0.15 + 0.5 * chance.uniform();
    return (x, y) => {
      const phase = Math.hypot(x - cx, y - cy) / pitch;
      return phase - Math.floor(phase) < width ? ring : ground;
    };
  },
  hatching: (widthMm, chance) => {
    const turn = chance.uniform() * Math.PI;
    const crossed = chance.uniform() < 0.3;
    const pitch = (crossed ? 0.3 : 0.13) + 0.5 * chance.uniform();
    const ground = sky(widthMm, chance);
    const ink = chance.uniform() < 0.5 ? [0, 0, 0, 0.9] : tint(chance, 0.8);
    const lineAt = (d: number, shade: number) => d / pitch - Math.floor(d / pitch) < shade;
    return (x, y) => {
      const shade = 0.15 + 0.35 * (0.5 + 0.5 * Math.sin(x * 0.5 + y * 0.3));
      const a = lineAt(x * Math.cos(turn) + y * Math.sin(turn) + 0.02 * Math.sin(3 * y), shade);
      const b = crossed && lineAt(x * Math.sin(turn) - y * Math.cos(turn), shade);
      return a || b ? ink : ground(x, y);
    };
  },
  weave: (_, chance) => {
    const [a, b] = [tint(chance, 0.5), tint(chance, 0.7)];
    const pitch = 0.4 + chance.uniform();
    return (x, y) => mixed(a, b, 0.5 + 0.5 * Math.sin(x / pitch) * Math.sin(y / pitch));
  },
  sky,
};

function sky(widthMm: number, chance: Chance): Art {
  const [top, middle, bottom] = [tint(chance, 0.5), tint(chance, 0.4), tint(chance, 0.6)];
  const middles = mixed(middle, top, 0.3);
  return (x, y) => {
    const share = Math.min(1, Math.max(0, (y + 0.3 * Math.sin(x)) / widthMm));
    return share < 0.5 ? mixed(top, middles, share * 2) : mixed(middles, bottom, share * 2 - 1);
  };
}

function mosaic(widthMm: number, chance: Chance): Art {
  const count = Math.round(3 * widthMm);
  const seeds = Array.from({ length: count }, () => ({
    x: chance.uniform() * widthMm,
    y: chance.uniform() * widthMm,
    tint: tint(chance, 0.6),
  }));
  const seam = tint(chance, 0.3).map((c, i) => (i === 3 ? 0.7 : c));
  return (x, y) => {
    let [first, second, best] = [Infinity, Infinity, seeds[0]];
    for (const seed of seeds) {
      const d = Math.hypot(seed.x - x, seed.y - y);
      if (d < first) [second, first, best] = [first, d, seed];
      else if (d < second) second = d;
    }
    return second - first < 0.12 ? seam : (best as { tint: readonly number[] }).tint;
  };
}

/** A colour as four coverages; part of what three inks share is printed in black instead. */
function tint(chance: Chance, strength: number): readonly number[] {
  const [c, m, y] = [0, 1, 2].map(() => chance.uniform() * 1.4 * strength) as [
    number,
    number,
    number,
  ];
  const grey = Math.min(c, m, y) * (0.3 + 0.6 * chance.uniform());
  return [c - grey, m - grey, y - grey, grey].map((v) => Math.min(0.95, Math.max(0, v)));
}

function mixed(a: readonly number[], b: readonly number[], share: number): readonly number[] {
  return a.map((value, i) => value + share * ((b[i] as number) - value));
}
