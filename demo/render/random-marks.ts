import type { Chance } from '../../src/maths/index.ts';
import type { Point } from './canvas.ts';
import {
  type Dent,
  type Marks,
  type Scratch,
  type Silvering,
  UNMARKED,
  type Wear,
} from './defects.ts';
import type { Face } from './face.ts';
import type { Rgb } from './light.ts';

/** Marks by chance: whitened corners and edges, dents, or scratches. */
export function randomMarks(
  random: Chance,
  face: Face,
  kind: 'worn' | 'inked' | 'silvered' | 'dented' | 'scratched',
): Marks {
  const between = (a: number, b: number) => a + (b - a) * random.uniform();
  const [w, h] = face.sizeMm;
  if (kind === 'worn') {
    const loss =
      random.uniform() < 0.2
        ? [{ centreMm: [between(0.2, 0.8) * w, -0.3] as Point, radiusMm: between(0.8, 1.6) }]
        : [];
    return { ...UNMARKED, wear: random.uniform() < 0.15 ? [] : wearOf(random, w, h), loss };
  }
  if (kind === 'inked') {
    const ink = inkNear(random, face.borderColour);
    return { ...UNMARKED, wear: wearOf(random, w, h).map((one) => ({ ...one, ink })) };
  }
  if (kind === 'silvered') {
    const silvering = Array.from({ length: 1 + random.below(4) }, () => silveringOf(random, w, h));
    return { ...UNMARKED, silvering };
  }
  if (kind === 'dented') return { ...UNMARKED, dents: dentsOf(random, w, h) };
  return {
    ...UNMARKED,
    scratches: Array.from({ length: 1 + random.below(4) }, () => scratchOf(random, w, h)),
  };
}

function wearOf(random: Chance, w: number, h: number): readonly Wear[] {
  const between = (a: number, b: number) => a + (b - a) * random.uniform();
  const corners = [0, 1, 2, 3] as const;
  const worn = corners.filter(() => random.uniform() < 0.45);
  const edges = (['left', 'right', 'top', 'bottom'] as const).filter(() => random.uniform() < 0.4);
  return [
    ...worn.map(
      (at): Wear => ({ type: 'corner', at, reachMm: between(0.5, 1.8), seed: random.below(999) }),
    ),
    ...edges.map((side): Wear => {
      const length = between(5, 22);
      const along = side === 'top' || side === 'bottom' ? w : h;
      const fromMm = between(7, Math.max(8, along - 7 - length));
      return {
        type: 'edge',
        side,
        fromMm,
        toMm: fromMm + length,
        depthMm: between(0.22, 0.7),
        seed: random.below(999),
      };
    }),
  ];
}

/** A pen's colour that is near the border's own and never quite it. */
function inkNear(random: Chance, border: Rgb): Rgb {
  const off = () => 1 + (random.uniform() < 0.5 ? -1 : 1) * (0.1 + 0.35 * random.uniform());
  return [border[0] * off(), border[1] * off(), border[2] * off()];
}

/** A patch inside the print, or a thin stretch along an edge. */
function silveringOf(random: Chance, w: number, h: number): Silvering {
  const between = (a: number, b: number) => a + (b - a) * random.uniform();
  const common = {
    grainMm: between(0.12, 0.4),
    cover: between(0.15, 0.6),
    bare: between(0.55, 0.9),
    seed: random.below(999),
  };
  if (random.uniform() < 0.5) {
    const halfMm: Point = [between(0.8, 3), between(0.8, 3)];
    return { ...common, halfMm, centreMm: [between(8, w - 8), between(8, h - 8)] };
  }
  const [long, deep] = [between(2, 9), between(0.3, 0.9)];
  const side = random.below(4);
  if (side < 2)
    return {
      ...common,
      halfMm: [long, deep],
      centreMm: [between(6 + long, w - 6 - long), side === 0 ? 0 : h],
    };
  return {
    ...common,
    halfMm: [deep, long],
    centreMm: [side === 2 ? 0 : w, between(6 + long, h - 6 - long)],
  };
}

function dentsOf(random: Chance, w: number, h: number): readonly Dent[] {
  const between = (a: number, b: number) => a + (b - a) * random.uniform();
  const profiles = ['cosine', 'gaussian', 'cap', 'elliptic'] as const;
  const dents: Dent[] = [];
  while (dents.length < 1 + random.below(3)) {
    const diameterMm = between(0.7, 2.4);
    const centreMm: Point = [between(7, w - 7), between(7, h - 7)];
    if (
      dents.some(
        (one) => Math.hypot(one.centreMm[0] - centreMm[0], one.centreMm[1] - centreMm[1]) < 9,
      )
    )
      continue;
    dents.push({
      centreMm,
      diameterMm,
      depthMm: diameterMm * between(0.05, 0.14),
      profile: profiles[random.below(4)]!,
      stretch: between(1.3, 2),
      turnDeg: between(0, 180),
    });
  }
  return dents;
}

/** A bent scratch by chance that stays on the card. */
export function scratchOf(random: Chance, w: number, h: number): Scratch {
  const between = (a: number, b: number) => a + (b - a) * random.uniform();
  const length = between(5, 32);
  const at: Point = [between(9, w - 9), between(9, h - 9)];
  let angle = Math.atan2(h / 2 - at[1], w / 2 - at[0]) + 0.5 * random.normal();
  const bend = 0.012 * random.normal();
  const line: Point[] = [at];
  for (let i = 0; i < 24; i++) {
    const [x, y] = line[i]!;
    line.push([x + (length / 24) * Math.cos(angle), y + (length / 24) * Math.sin(angle)]);
    angle += bend;
  }
  return { polylineMm: line, widthMm: between(0.1, 0.2), depthMm: between(0.012, 0.03) };
}
