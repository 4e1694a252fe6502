import type { Chance } from '../../src/maths/index.ts';
import type { Point } from './canvas.ts';
import { hsv, mixed, type Rgb } from './light.ts';
import type { Thing } from './scene.ts';

const between = (random: Chance, a: number, b: number) => a + (b - a) * random.uniform();

/** Other things round about the card; they may reach under it. */
export function clutter(random: Chance, [w, h]: Point): readonly Thing[] {
  const shapes = ['disc', 'pencil', 'packet', 'card'] as const;
  return Array.from({ length: 1 + random.below(4) }, (): Thing => {
    const angle = between(random, 0, 2 * Math.PI);
    const shape = shapes[random.below(4)]!;
    const size: Point = {
      disc: [25, 25] as const,
      pencil: [150, 8] as const,
      packet: [70, 105] as const,
      card: [63, 88] as const,
    }[shape];
    const far = between(random, 55, 80);
    const colour: Rgb = hsv(random.uniform(), 0.6, between(random, 0.2, 0.8));
    return {
      shape,
      centreMm: [w / 2 + far * Math.cos(angle), h / 2 + 1.25 * far * Math.sin(angle)],
      sizeMm: size,
      turnDeg: between(random, 0, 180),
      colour,
      second: mixed(colour, hsv(random.uniform(), 0.5, 0.8), 0.8),
    };
  });
}
