// What one piece of evidence must do to the answer, and what it must not.
import { describe, expect, it } from 'vitest';
import { type DateOptions, date } from '../../src/dating/index.ts';
import type { Source } from '../../src/evidence/index.ts';
import { deepFreeze, dossier, type Said, type Sketch } from './dossier.ts';
import { dayNumber, unsound } from './sound.ts';

function dated(sketch: Sketch, options: DateOptions = { effort: 'first' }) {
  const evidence = deepFreeze(dossier(sketch));
  const answer = date(evidence, options);
  expect(unsound(answer, evidence)).toEqual([]);
  return answer;
}

describe('a fact of sequence', () => {
  const { printings, sequences, order, first } = dated({
    printings: ['late', 'early', 'unknown'],
    sources: ['s', 't'],
    said: [
      ['early', 's', '1999-06-11'],
      ['late', 't', '1999-03-05'],
      ['late', 's', '1999-06-18'],
    ],
    orders: ['early<late', 'late<unknown'],
  });
  const of = (id: string) => printings.find((p) => p.id === id)!;

  it('is certain in sequences, and stated', () => {
    expect(order).toEqual(['early', 'late', 'unknown']);
    expect(sequences).toEqual([
      { earlier: 'early', later: 'late', p: 1, p_same_day: 0, stated: true },
      { earlier: 'late', later: 'unknown', p: 1, p_same_day: 0, stated: true },
    ]);
    expect(first.map(({ id }) => id)).toEqual(['early']);
  });

  it('puts the best days in order, against a claim that says otherwise', () => {
    expect(dayNumber(of('early').best!)).toBeLessThan(dayNumber(of('late').best!));
    expect(dayNumber(of('late').best!)).toBeLessThan(dayNumber(of('unknown').best!));
    const wrong = of('late').claims.find((c) => c.value === '1999-03-05')!;
    // June in March's place needs two sources to fail; the fact leaves March to 'early' alone.
    expect(wrong).toMatchObject({ slip: true });
  });

  it('leaves to a printing without claims the window after the one before it', () => {
    expect(of('unknown').state).toBe('bounded');
    const mass = of('unknown').days.filter(([day]) => day > '1999-06-11');
    expect(mass.reduce((sum, [, p]) => sum + p, 0)).toBeGreaterThan(0.5);
  });
});

describe('a sighting', () => {
  const { printings } = dated({
    printings: ['seen', 'kept', 'anchor'],
    sources: [{ id: 's', kind: 'own-observation', cites: [] }],
    said: [
      ['seen', 's', '1999-03-05', 'seen-by'],
      ['kept', 's', '1999-03-05', 'not-before'],
      ['anchor', 's', '1997-01-10', 'on-sale'],
      ['anchor', 's', '2002-01-10', 'distributed-until'],
    ],
  });
  const mass = (id: string, inside: (day: string) => boolean) =>
    printings
      .find((p) => p.id === id)!
      .days.filter(([day]) => inside(day))
      .reduce((sum, [, p]) => sum + p, 0);

  // The prior of src/dating/histograms.ts leaves 2.6 % to the wrong side, as density over the same
  // bins; the window on the right side is cut by the dossier's range, so allowed 10 %.
  it('comes after the release', () => {
    expect(mass('seen', (day) => day <= '1999-03-05')).toBeGreaterThan(0.9);
  });

  it('that it was not out yet comes before it', () => {
    expect(mass('kept', (day) => day >= '1999-03-05')).toBeGreaterThan(0.9);
  });
});

describe('a source that repeats another', () => {
  const names = Array.from({ length: 8 }, (_, i) => `p${i}`);
  const day = (i: number) => `199${4 + (i % 5)}-0${1 + i}-1${i}`;
  // The second source is wrong about p0 by weeks and about p1 by months; the third repeats it.
  const wrong: Record<string, string> = { p0: '1994-02-03', p1: '1995-06-20' };
  const said = (source: string, of: (i: number, id: string) => string): Said[] =>
    names.map((id, i) => [id, source, of(i, id)]);
  const base = [...said('s', day), ...said('t', (i, id) => wrong[id] ?? day(i))];
  const copy = said('u', (i, id) => wrong[id] ?? day(i));
  const sources: Source[] = [
    { id: 's', kind: 'checklist', cites: [] },
    { id: 't', kind: 'checklist', cites: [] },
    { id: 'u', kind: 'checklist', cites: ['t'] },
  ];
  const answers = Array.from({ length: 8 }, (_, i) => i + 1).map((seed) => {
    const of = (sources: Source[], said: Said[]) =>
      dated({ printings: names, sources, said }, { seed, effort: 'refined' });
    return { before: of(sources.slice(0, 2), base), after: of(sources, [...base, ...copy]) };
  });
  const { after } = answers[0]!;
  const p = (answer: typeof after, i: number, iso: string) =>
    answer.printings[i]!.days.find(([d]) => d === iso)?.[1] ?? 0;

  it('is named as derived from it', () => {
    const u = after.sources.find((s) => s.id === 'u')!;
    expect(u.derives.find(({ from }) => from === 't')!.p).toBeGreaterThan(0.5);
  });

  it.each([0, 1])('adds hardly anything to the day in dispute of p%i', (i) => {
    const iso = wrong[`p${i}`]!;
    // An honest third witness would lift it to 0.7 or more. A source that cites another is held to
    // take from it four times in five, so a fifth of that lift is its due. One answer to so small a
    // question is sure to about 0.08 only, so eight seeds are averaged. Measured over sixteen: 0.06
    // and 0.10, allowed 0.14.
    const added = answers.map(({ before, after }) => p(after, i, iso) - p(before, i, iso));
    expect(added.reduce((a, b) => a + b, 0) / added.length).toBeLessThan(0.14);
  });
});
