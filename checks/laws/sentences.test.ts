// What a collector reads: days in words, printings and sources by name, never an id or an ISO day.
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { type Dating, date } from '../../src/dating/index.ts';
import { readDossier } from '../../src/dossier/index.ts';
import { filesOf } from '../../src/host/index.ts';
import { simulate } from '../simulator/index.ts';
import { dossier } from './dossier.ts';

const demo = join(import.meta.dirname, '../../demo/dossier');
const { evidence } = await readDossier(await filesOf(demo));
const answer = date(evidence, { effort: 'first' });

/** Every sentence or part of one that an answer holds. */
function sentencesOf({ printings, sources, leads }: Dating): readonly string[] {
  return [
    ...printings.flatMap(({ why, claims }) => [
      why,
      ...claims.flatMap(({ explanation, others }) => [
        explanation,
        ...others.map((other) => other.explanation),
      ]),
    ]),
    ...sources.flatMap(({ habits }) => habits.map(({ words }) => words)),
    ...leads.map(({ words }) => words),
  ];
}

describe('the sentences of the demo', () => {
  const sentences = [...new Set(sentencesOf(answer))];
  const { printings, sources, products } = evidence;
  const ids = [...printings, ...sources, ...products].map(({ id }) => id);

  it('are many', () => expect(sentences.length).toBeGreaterThan(40));

  it('hold no day as ISO writes it', () => {
    expect(sentences.filter((one) => /\d{4}-\d\d|\[\d|\d\/\d{4}-/.test(one))).toEqual([]);
  });

  it('hold no id', () => {
    const named = new RegExp(`(?<![\\w-])(${ids.join('|')})(?![\\w-])`);
    expect(named.test('the day of gb-first')).toBe(true);
    expect(sentences.filter((one) => named.test(one))).toEqual([]);
  });

  it('say what was taken for what', () => {
    const readingsOf = (id: string, source: string, value: string) =>
      answer.printings
        .find((one) => one.id === id)!
        .claims.filter((one) => one.source === source && one.value === value)
        .flatMap(({ explanation, others }) => [explanation, ...others.map((o) => o.explanation)]);
    expect(readingsOf('fi-tin', 'reedcutter', '2002-03-05')).toContain(
      '3 May 2002 with day and month swapped',
    );
    expect(readingsOf('pl-road', 'willowherb', '2007-06-14')).toContain(
      'the day of the Korean Ninefen Road Box, another release of the same product',
    );
    expect(readingsOf('gb-second', 'qm-archive', '1994-10-07')).toContain(
      'as it says, but of the English Ninefen Starter Box (wave 1)',
    );
    expect(readingsOf('gb-first', 'willowherb', '1994-10-17')).toContain(
      'miscopied from The Reedcutter Checklist',
    );
  });
});

describe('a claim that holds', () => {
  const { evidence } = simulate({
    seed: 8,
    printings: 20,
    claims: 160,
    sources: 8,
    difficulty: 'hard',
  });
  const claims = date(evidence, { effort: 'first' }).printings.flatMap((one) => one.claims);
  const exact = claims.filter(
    ({ property, span }) => property === 'on-sale' && span[0] === span[1],
  );
  const WRONG = [
    ...['next-day', 'few-days', 'swapped', 'first-of-month', 'year-off'],
    ...['other-moment', 'cover-date', 'noise'],
  ];

  it('is told as no slip that it cannot be', () => {
    const read = exact.flatMap(({ p_right, reading, p_reading, others }) =>
      [{ reading, p: p_reading }, ...others].map((one) => ({ ...one, p_right })),
    );
    const slips = read.filter(({ reading }) => WRONG.includes(reading));
    expect(slips.length).toBeGreaterThan(3);
    // Both are rounded to six digits.
    for (const { p, p_right } of slips) expect(p).toBeLessThanOrEqual(1 - p_right + 2e-6);
  });

  it('is told as wrong where it is improbable', () => {
    const slips = exact.filter(({ slip }) => slip);
    expect(slips.length).toBeGreaterThan(10);
    expect(slips.filter(({ reading }) => reading === 'right')).toEqual([]);
  });
});

describe('ways of being wrong', () => {
  const agreed = ['a', 'b', 'c'].map((source) => ['x', source, '1998-08-14'] as const);
  const said = (value: string, property = 'on-sale') => {
    const answer = date(
      dossier({
        printings: ['x'],
        sources: ['a', 'b', 'c', 'd'],
        said: [...agreed, ['x', 'd', value, property]],
      }),
    );
    return answer.printings[0]!.claims.find(({ source }) => source === 'd')?.explanation;
  };

  it.each([
    ['1998-08-15', 'a day late, as across the date line'],
    ['1998-08-13', 'a day early, as across the date line'],
    ['1998-08-18', '4 days late, as parcels can be'],
    ['1998-08-01', 'the first of the month, standing for the whole month'],
  ])('%s is %s', (value, words) => {
    expect(said(value)).toBe(words);
  });

  it.each([
    ['1998-07-31', 'announced', 'planned for then, but came 14 days late'],
    ['1998-08', 'announced', 'planned for then, and kept'],
    ['1998-09', 'cover-date', 'the cover runs 18 days ahead of sale'],
    ['1998-08-01', 'printed-on', 'printed 13 days before release'],
    ['1998-08-20', 'seen-by', 'seen by then, so already out'],
    ['1997', 'label-year', 'one year too early'],
    ['1999', 'label-year', 'one year too late'],
  ])('%s as %s is %s', (value, property, words) => {
    expect(said(value, property)).toBe(words);
  });
});
