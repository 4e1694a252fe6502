import type { Ray } from './round-outline.ts';

/** How far the cut edge lies inside the given outline at both ends of a side, mm. */
export type SideEdge = readonly [start: number, end: number];

/** The rays moved to the cut edge; at a tip it goes over from one side's end to the next's start. */
export function movedTo(edges: readonly SideEdge[], rays: readonly Ray[]): readonly Ray[] {
  const counts = new Float64Array(8);
  for (const { part } of rays) counts[part] = (counts[part] as number) + 1;
  let first = 0;
  return rays.map((ray, i) => {
    if (rays[i - 1]?.part !== ray.part) first = i;
    const [start, end] = edges[ray.part >> 1] as SideEdge;
    const next = (edges[((ray.part >> 1) + 1) % 4] as SideEdge)[0];
    const [from, to] = ray.part % 2 === 0 ? [start, end] : [end, next];
    const depth =
      from + ((to - from) * (i - first)) / Math.max(1, (counts[ray.part] as number) - 1);
    return {
      ...ray,
      x: ray.x + depth * ray.inX,
      y: ray.y + depth * ray.inY,
      width: ray.width - depth * ray.narrows,
    };
  });
}
