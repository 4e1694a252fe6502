import { cells, layered, smooth } from './noise.ts';
import type { Ground } from './scene.ts';

/** Light of the ground at millimetres of its plane, written into `out`. */
export type Surface = (x: number, y: number, out: Float64Array) => void;

/** The surface of a ground: how far each place lies between its two colours. */
export function surfaceOf(ground: Ground): Surface {
  const { colour: a, second: b, seed, contrast } = ground;
  const share = SHARES[ground.kind];
  const t = (ground.turnDeg * Math.PI) / 180;
  const [c, s] = [Math.cos(t), Math.sin(t)];
  return (x, y, out) => {
    const u = c * x + s * y;
    const v = -s * x + c * y;
    const k = Math.max(0, Math.min(1, 0.5 + contrast * (share(u, v, seed) - 0.5)));
    out[0] = a[0] + (b[0] - a[0]) * k;
    out[1] = a[1] + (b[1] - a[1]) * k;
    out[2] = a[2] + (b[2] - a[2]) * k;
  };
}

const near = new Float64Array(3);

const SHARES: Readonly<Record<Ground['kind'], (u: number, v: number, seed: number) => number>> = {
  plain: (u, v, seed) => 0.35 + 0.3 * layered(u / 20, v / 20, seed, 2),
  mat: (u, v, seed) => 0.35 + 0.3 * layered(u / 1.1, v / 1.1, seed, 2),
  wood(u, v, seed) {
    const bent = v + 6 * layered(u / 60, v / 25, seed, 2);
    const ring = 0.5 + 0.5 * Math.sin(bent * 0.9 + 5 * smooth(u / 90, v / 9, seed + 3));
    return 0.55 * ring + 0.45 * layered(u / 14, v / 0.55, seed + 5, 2);
  },
  cloth(u, v, seed) {
    const weft = Math.sin(u * 7.3) * Math.sin(v * 7.3);
    return 0.5 + 0.28 * weft + 0.3 * (layered(u / 3, v / 3, seed, 2) - 0.5);
  },
  stripes(u, v, seed) {
    const at = ((v % 23) + 23) % 23;
    const band = at < 6 ? 0.9 : at > 11 && at < 13.5 ? 0.7 : 0.1;
    return band + 0.12 * (layered(u / 1.2, v / 1.2, seed, 2) - 0.5);
  },
  cork(u, v, seed) {
    cells(u / 2.4, v / 2.4, seed, near);
    return (
      0.6 * near[2]! +
      0.5 * Math.min(1, (near[1]! - near[0]!) * 2.2) * layered(u / 5, v / 5, seed, 2)
    );
  },
  marble(u, v, seed) {
    const vein = Math.abs(layered(u / 34, v / 34, seed, 4) - 0.5);
    return 0.25 + 0.3 * layered(u / 20, v / 20, seed + 9, 3) + 0.6 * Math.max(0, 1 - vein * 40);
  },
  leather(u, v, seed) {
    cells(u / 1.3, v / 1.3, seed, near);
    return 0.15 + 0.8 * Math.min(1, (near[1]! - near[0]!) * 2.5) * (0.6 + 0.4 * near[2]!);
  },
  tiles(u, v, seed) {
    const row = Math.floor(v / 30);
    const x = (((u + 24 * (row & 1)) % 48) + 48) % 48;
    const y = ((v % 30) + 30) % 30;
    const joint = x < 2 || y < 2 ? 0.95 : 0.25 + 0.25 * layered(u / 8, v / 8, seed, 2);
    return joint;
  },
};
