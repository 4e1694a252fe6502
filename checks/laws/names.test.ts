// What must not matter: names, the hour of the century, and that it has been asked before.
import { describe, expect, it } from 'vitest';
import { type Dating, date } from '../../src/dating/index.ts';
import { type Evidence, isoOf } from '../../src/evidence/index.ts';
import { simulate } from '../simulator/index.ts';
import { deepFreeze, edtf } from './dossier.ts';
import { dayNumber } from './sound.ts';

const { evidence } = simulate({
  seed: 5,
  printings: 6,
  claims: 36,
  sources: 5,
  difficulty: 'medium',
});
const answer = date(deepFreeze(evidence), { effort: 'first', seed: 3 });

/** The evidence with every id of printings, products and sources replaced. */
function renamed(from: Evidence, name: (id: string) => string): Evidence {
  const product = <T extends { readonly product?: string }>(one: T) =>
    one.product === undefined ? one : { ...one, product: name(one.product) };
  return {
    printings: from.printings.map((p) => product({ ...p, id: name(p.id) })),
    products: from.products.map((p) => ({ ...p, id: name(p.id) })),
    contents: from.contents.map((c) => product({ ...c, printing: name(c.printing) })),
    sources: from.sources.map((s) => ({ ...s, id: name(s.id), cites: s.cites.map(name) })),
    claims: from.claims.map((c) =>
      product({ ...c, source: name(c.source), printings: c.printings.map(name) }),
    ),
    orders: from.orders.map((o) => ({ ...o, earlier: name(o.earlier), later: name(o.later) })),
  };
}

describe('an answer', () => {
  it('is the same to the byte when asked again with the same seed', () => {
    const again = date(evidence, { effort: 'first', seed: 3 });
    expect(JSON.stringify(again)).toBe(JSON.stringify(answer));
  });

  it('takes other names where the evidence has other names, and is else the same', () => {
    // Names in reverse order of the alphabet, so that nothing may be sorted by name.
    const ids = [...evidence.printings, ...evidence.products, ...evidence.sources].map((x) => x.id);
    const sorted = [...new Set(ids)].sort().reverse();
    const nameOf = new Map(sorted.map((id, j) => [id, `n${String(j).padStart(3, '0')}n`]));
    const other = date(
      renamed(evidence, (id) => nameOf.get(id)!),
      { effort: 'first', seed: 3 },
    );
    const back = new Map([...nameOf].map(([id, name]) => [name, id]));
    const text = JSON.stringify(other).replace(/n\d{3}n/g, (name) => back.get(name)!);
    expect(JSON.parse(text)).toEqual(JSON.parse(JSON.stringify(answer)));
  });
});

/** 28 Julian years: the same weekdays, months and leap years, short of 1900 and 2100. */
const SHIFT = 10_227;

describe('28 years later', () => {
  const later = (iso: string) => isoOf(dayNumber(iso) + SHIFT);
  // Only days are kept, so that a claim can be moved by its text.
  const days = { ...evidence, claims: evidence.claims.filter((c) => c.date?.form === 'day') };
  const moved = {
    ...days,
    claims: days.claims.map((c) => {
      const text = isoOf(c.date!.ranges[0]!.first + SHIFT);
      return { ...c, value: text, date: edtf(text) };
    }),
  };
  const before = date(days, { effort: 'first' });
  const after = date(moved, { effort: 'first' });

  it('has dates in the years where the calendar repeats', () => {
    expect(days.claims.length).toBeGreaterThan(15);
    const years = moved.claims.map((c) => Number(c.value.slice(0, 4)));
    expect(Math.min(...years)).toBeGreaterThan(1930);
    expect(Math.max(...years)).toBeLessThan(2096);
  });

  it('the answer is the same, 28 years later', () => {
    const daysOf = ({ printings }: Dating, shift: (iso: string) => string) =>
      printings.flatMap((p) => p.days.map(([day, p]) => [shift(day), p] as const));
    const found = new Map(after.printings.map((p) => [p.id, new Map(p.days)]));
    for (const { id, days } of before.printings) {
      for (const [day, p] of days) expect(found.get(id)!.get(later(day))).toBeCloseTo(p, 9);
    }
    expect(daysOf(after, (d) => d).map(([d]) => d)).toEqual(daysOf(before, later).map(([d]) => d));
  });
});
