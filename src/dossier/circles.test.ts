import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { circlesOf, type Edge } from './circles.ts';

const id = fc.constantFrom('a', 'b', 'c', 'd', 'e', '__proto__');
const edges = fc
  .array(fc.tuple(id, id), { maxLength: 12 })
  .map((pairs) => pairs.map(([from, to], i): Edge => ({ row: i + 2, from, to })));

/** All ids that can be reached, by taking one step as often as there are edges. */
function reached(from: string, all: readonly Edge[]): Set<string> {
  const found = new Set([from]);
  for (let i = 0; i < all.length; i++) {
    for (const edge of all) if (found.has(edge.from)) found.add(edge.to);
  }
  return found;
}

describe('circlesOf', () => {
  it('finds the edges that lead back to where they began, and no others', () => {
    fc.assert(
      fc.property(edges, (all) => {
        const expected = all.filter((edge) => reached(edge.to, all).has(edge.from));
        expect(circlesOf(all).within).toEqual(new Set(expected));
      }),
    );
  });

  it('names circles that are there, and every id of them', () => {
    fc.assert(
      fc.property(edges, (all) => {
        const steps = new Set(all.map((edge) => `${edge.from} ${edge.to}`));
        const { circles, within } = circlesOf(all);
        for (const { ids } of circles) {
          expect(ids[0]).toBe(ids.at(-1));
          ids.slice(1).forEach((to, i) => {
            expect(steps).toContain(`${ids[i]} ${to}`);
          });
        }
        const named = new Set(circles.flatMap(({ ids }) => ids));
        for (const edge of within) expect(named).toContain(edge.from);
      }),
    );
  });

  it('takes a long chain without a circle', () => {
    const chain = Array.from({ length: 50_000 }, (_, i): Edge => {
      return { row: i + 2, from: `p-${i}`, to: `p-${i + 1}` };
    });
    expect(circlesOf(chain).circles).toEqual([]);
    const closed = [...chain, { row: 1, from: 'p-50000', to: 'p-0' }];
    expect(circlesOf(closed).circles[0]?.ids).toHaveLength(50_002);
  });
});
