import type { LineChain } from './line-chains.ts';

const GAP_PX = 30;
const ASIDE_PX = 4;
const TURN = Math.cos((12 * Math.PI) / 180);

/** Puts pieces that go on in one another, over gaps of up to 30 pixels, into one list of cells each. */
export function joinedCellsOf(chains: readonly LineChain[]): readonly (readonly number[])[] {
  const group = chains.map((_, i) => i);
  chains.forEach((one, i) => {
    chains.slice(0, i).forEach((other, j) => {
      if (!goesOn(one, other)) return;
      const [from, to] = [group[i], group[j]];
      group.forEach((value, k) => {
        if (value === from) group[k] = to as number;
      });
    });
  });
  const cells = new Map<number, number[]>();
  chains.forEach((chain, i) => {
    const key = group[i] as number;
    cells.set(key, [...(cells.get(key) ?? []), ...chain.cells]);
  });
  return [...cells.values()];
}

type Pixel = readonly [x: number, y: number];

/** Whether one piece begins near where the other ends, in line with it. */
function goesOn(one: LineChain, other: LineChain): boolean {
  const ends = (chain: LineChain): [Pixel, Pixel] => [
    chain.pixels[0] as Pixel,
    chain.pixels.at(-1) as Pixel,
  ];
  const [a, b] = [ends(one), ends(other)];
  const [wayA, wayB] = [wayOf(a), wayOf(b)];
  if (Math.abs(wayA[0] * wayB[0] + wayA[1] * wayB[1]) < TURN) return false;
  return a.some((p) =>
    b.some((q) => {
      const [dx, dy] = [p[0] - q[0], p[1] - q[1]];
      const aside = Math.abs(wayA[0] * dy - wayA[1] * dx);
      return Math.hypot(dx, dy) < GAP_PX && aside < ASIDE_PX;
    }),
  );
}

function wayOf([from, to]: readonly [Pixel, Pixel]): Pixel {
  const [dx, dy] = [to[0] - from[0], to[1] - from[1]];
  const length = Math.max(Math.hypot(dx, dy), 1e-6);
  return [dx / length, dy / length];
}
