import { chance } from '../../src/maths/index.ts';
import type { Canvas, Contour, Point } from './canvas.ts';
import { hare } from './hare.ts';
import { hsv, mixed, type Rgb } from './light.ts';
import { cells, layered } from './noise.ts';
import { type Plot, put, wash } from './plot.ts';
import { ellipse, leaf, rectangle, stroke } from './shapes.ts';

/** Kinds of invented art. */
export const ARTS = [
  'foliage',
  'harbour',
  'moon',
  'rings',
  'mosaic',
  'weave',
  'hare',
  'hare-right',
] as const;
/** One kind of invented art. */
export type Art = (typeof ARTS)[number];

/** Paints the art into its box; it may run beyond it, for a border to cover. */
export function paintArt(
  canvas: Canvas,
  face: {
    readonly art: Art;
    readonly seed: number;
    readonly hue: number;
    readonly paleBell?: boolean;
  },
  box: Plot['box'],
  place: Plot['place'],
): void {
  const { art, seed, hue, paleBell = false } = face;
  PAINTERS[art]({ canvas, box, place, random: chance(seed), hue, paleBell });
}

function within({ box, random }: Plot): Point {
  const [x0, y0, x1, y1] = box;
  return [x0 + (x1 - x0) * random.uniform(), y0 + (y1 - y0) * random.uniform()];
}

const PAINTERS: Readonly<Record<Art, (plot: Plot) => void>> = {
  foliage(plot) {
    const { random, hue } = plot;
    const dark = hsv(hue + 0.32, 0.55, 0.22 + 0.15 * random.uniform());
    wash(plot, (x, y) => mixed(dark, hsv(hue + 0.3, 0.4, 0.45), layered(x / 9, y / 9, 5, 3)));
    for (let i = 0; i < 210; i++) {
      const colour = hsv(
        hue + 0.33 + 0.16 * random.normal() * 0.5,
        0.5,
        0.3 + 0.5 * random.uniform(),
      );
      const accent = hsv(hue + 0.9, 0.7, 0.8);
      const length = 2.5 + 5 * random.uniform();
      const angle = 6.28 * random.uniform();
      const at = within(plot);
      put(plot, [leaf(at, length, 0.42 * length, angle)], random.uniform() < 0.1 ? accent : colour);
      const rib: Point = [
        at[0] + length * 0.9 * Math.cos(angle),
        at[1] + length * 0.9 * Math.sin(angle),
      ];
      put(plot, [stroke(at, rib, 0.12)], dark);
    }
  },
  harbour(plot) {
    const { random, hue, box } = plot;
    const [x0, y0, x1, y1] = box;
    const sea = y0 + (y1 - y0) * (0.5 + 0.15 * random.uniform());
    const sun: Point = [x0 + (x1 - x0) * random.uniform(), sea];
    const low = hsv(hue + 0.1, 0.3, 0.95);
    wash(plot, (_, y) => mixed(hsv(hue + 0.6, 0.5, 0.85), low, (y - y0) / (sea - y0)));
    const rays = hsv(hue + 0.05, 0.25, 0.98);
    for (let i = 0; i < 11; i++) {
      const t = Math.PI * (1 + (i + 0.3) / 11);
      const ray: Contour = [
        sun,
        ...[0, 0.14].map(
          (d): Point => [sun[0] + 120 * Math.cos(t + d), sun[1] + 120 * Math.sin(t + d)],
        ),
      ];
      put(plot, [ray], rays);
    }
    put(plot, [ellipse(sun, 7)], hsv(hue + 0.03, 0.65, 0.92));
    put(plot, [rectangle(x0, sea, x1, y1)], hsv(hue + 0.55, 0.6, 0.42));
    for (let i = 0; i < 26; i++) {
      const y = sea + 0.6 + i * 0.9;
      put(plot, [rectangle(x0, y, x1, y + 0.16 + 0.01 * i)], hsv(hue + 0.5, 0.4, 0.68));
    }
    for (let i = 0; i < 4; i++)
      boat(
        plot,
        [x0 + (x1 - x0) * random.uniform(), sea + 3 + 12 * random.uniform()],
        4 + 6 * random.uniform(),
      );
  },
  moon(plot) {
    const { random, hue, box } = plot;
    const [x0, y0, x1, y1] = box;
    wash(plot, (x, y) =>
      mixed(
        hsv(hue + 0.65, 0.7, 0.2),
        hsv(hue + 0.75, 0.5, 0.5),
        layered(x / 16, y / 10, 8, 4) * ((y - y0) / (y1 - y0)),
      ),
    );
    for (let i = 0; i < 130; i++)
      put(
        plot,
        [ellipse(within(plot), 0.08 + 0.2 * random.uniform(), undefined, 0, 10)],
        hsv(0.15, 0.1, 0.95),
      );
    const at: Point = [x0 + (x1 - x0) * (0.3 + 0.4 * random.uniform()), y0 + (y1 - y0) * 0.32];
    put(plot, [ellipse(at, 11)], hsv(0.14, 0.18, 0.95));
    for (let i = 0; i < 9; i++)
      put(
        plot,
        [
          ellipse(
            [at[0] + 3.6 * random.normal(), at[1] + 3.6 * random.normal()],
            0.6 + 1.4 * random.uniform(),
          ),
        ],
        hsv(0.13, 0.2, 0.82),
      );
    for (let k = 0; k < 3; k++)
      hills(
        plot,
        y0 + (y1 - y0) * (0.6 + 0.13 * k),
        hsv(hue + 0.5 + 0.06 * k, 0.5, 0.34 - 0.09 * k),
      );
  },
  rings(plot) {
    const { random, hue, box } = plot;
    const [x0, y0, x1, y1] = box;
    const at: Point = [(x0 + x1) / 2 + 3 * random.normal(), (y0 + y1) / 2 + 5 * random.normal()];
    const ground = hsv(hue + 0.3, 0.5, 0.25 + 0.3 * random.uniform());
    const ring = hsv(hue + 0.2, 0.35, 0.7);
    const pitch = 2.2 + random.uniform();
    wash(plot, (x, y) => {
      const d = Math.hypot(x - at[0], (y - at[1]) * 0.8) / pitch;
      const band = Math.abs(d - Math.round(d)) * pitch;
      return mixed(ring, ground, Math.min(1, Math.max(0, (band - 0.22) / 0.08)));
    });
    for (let i = 0; i < 7; i++) {
      const r = 1.2 + 3 * random.uniform();
      const centre = within(plot);
      put(plot, [ellipse(centre, r)], hsv(random.uniform(), 0.7, 0.85));
      put(
        plot,
        [ellipse([centre[0] + 0.3 * r, centre[1] + 0.3 * r], 0.6 * r)],
        hsv(random.uniform(), 0.6, 0.5),
      );
    }
  },
  mosaic(plot) {
    const { hue, box, random } = plot;
    const out = new Float64Array(3);
    const size = 3.5 + 3 * random.uniform();
    const seed = random.below(10_000);
    const lead: Rgb = [0.015, 0.013, 0.02];
    wash(plot, (x, y) => {
      cells(x / size, y / size, seed, out);
      const tint = hsv(
        hue + 0.3 * out[2]! + 0.3 * ((y - box[1]) / 80),
        0.55,
        0.35 + 0.55 * out[2]!,
      );
      return mixed(lead, tint, Math.min(1, Math.max(0, ((out[1]! - out[0]!) * size - 0.18) / 0.1)));
    });
  },
  weave(plot) {
    const { hue, random, box } = plot;
    const [a, b] = [4 + 5 * random.uniform(), 4 + 5 * random.uniform()];
    wash(plot, (x, y) => {
      const u = Math.floor(x / a) % 3;
      const v = Math.floor(y / b) % 3;
      const twill = ((Math.floor(x * 2) + Math.floor(y * 2)) & 1) * 0.2;
      return hsv(hue + 0.11 * u + 0.17 * v, 0.45 + 0.1 * v, 0.35 + 0.18 * u + twill);
    });
    const at: Point = [(box[0] + box[2]) / 2, box[1] + (box[3] - box[1]) * 0.4];
    const petals = Array.from({ length: 11 }, (_, i) =>
      ellipse(
        [at[0] + 9 * Math.cos(0.571 * i), at[1] + 9 * Math.sin(0.571 * i)],
        5.2,
        2.6,
        0.571 * i,
      ),
    );
    for (const petal of petals) put(plot, [petal], hsv(hue + 0.5, 0.65, 0.88));
    put(plot, [ellipse(at, 7)], hsv(hue + 0.72, 0.2, 0.95));
  },
  hare: (plot) => hare(plot, 1),
  'hare-right': (plot) => hare(plot, -1),
};

function boat(plot: Plot, [x, y]: Point, s: number): void {
  const { random, hue } = plot;
  const tint = hsv(hue + random.uniform(), 0.7, 0.8);
  put(
    plot,
    [
      [
        [x - s / 2, y],
        [x + s / 2, y],
        [x + s / 3, y + s / 5],
        [x - s / 3, y + s / 5],
      ],
    ],
    hsv(hue + 0.02, 0.6, 0.3),
  );
  put(
    plot,
    [
      [
        [x - s / 10, y - 0.2],
        [x - s / 10, y - s],
        [x + s / 2.4, y - 0.2],
      ],
    ],
    tint,
  );
  put(
    plot,
    [
      [
        [x - s / 6, y - 0.2],
        [x - s / 6, y - 0.8 * s],
        [x - s / 2, y - 0.2],
      ],
    ],
    [0.85, 0.83, 0.78],
  );
}

function hills(plot: Plot, base: number, colour: Rgb): void {
  const [x0, , x1, y1] = plot.box;
  const seed = plot.random.below(999);
  const line = Array.from({ length: 60 }, (_, i): Point => {
    const x = x0 + ((x1 - x0) * i) / 59;
    return [x, base - 9 * layered(x / 14, seed, seed, 3) + 4];
  });
  put(plot, [[...line, [x1, y1], [x0, y1]]], colour);
}
