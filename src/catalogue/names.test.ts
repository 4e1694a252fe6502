import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type NamedBy, nameOf, nameOfCode, namesOf } from './names.ts';

const named = (rows: Record<string, NamedBy & { title?: string }>) =>
  namesOf(
    Object.entries(rows).map(([id, { title, ...cells }]) => ({ id, cells, productTitle: title })),
  );
const shortsOf = (rows: Parameters<typeof named>[0]) =>
  [...named(rows).values()].map(({ short }) => short);

describe('a printing among others', () => {
  const box = { language: 'en', market: 'GB', product: 'box', title: 'First Box', number: '31' };

  it('is called by language and product, and in short by what tells it apart alone', () => {
    const names = named({
      one: { ...box, finish: 'plain', wave: '1' },
      two: { ...box, finish: 'plain', wave: '2' },
      tin: { language: 'ko', market: 'KR', product: '첫 상자', finish: 'foil', wave: '1' },
    });
    expect(names.get('one')).toEqual({
      title: 'English, First Box',
      detail: '31, plain, wave 1',
      short: 'English First Box (wave 1)',
    });
    expect(names.get('two')?.short).toBe('English First Box (wave 2)');
    expect(names.get('tin')).toEqual({
      title: 'Korean, 첫 상자',
      detail: 'foil',
      short: 'Korean 첫 상자',
    });
  });

  it('is told by its market where language and product are the same', () => {
    expect(shortsOf({ a: box, b: { ...box, market: 'US' } })).toEqual([
      'English First Box (United Kingdom)',
      'English First Box (United States)',
    ]);
  });

  it('is told by channel or name where nothing nearer differs', () => {
    const names = named({
      a: { ...box, channel: 'retail' },
      b: { ...box, channel: 'club' },
      c: { ...box, channel: 'club', printed_name: 'Hare' },
    });
    expect([...names.values()].map(({ short }) => short)).toEqual([
      'English First Box (retail)',
      'English First Box (club)',
      'English First Box (club, Hare)',
    ]);
    expect(names.get('c')?.detail).toBe('31, club, Hare');
  });

  it('has its id in its name only where nothing else tells two apart', () => {
    expect(shortsOf({ a: box, b: box, c: { language: 'en', edition: 'second' } })).toEqual([
      'English First Box (a)',
      'English First Box (b)',
      'English second',
    ]);
    expect(named({ a: {} }).get('a')).toEqual({ title: 'a', detail: '', short: 'printing a' });
  });

  it('tells what has none from what is not known, and says no other none', () => {
    expect(
      shortsOf({
        a: { ...box, number: 'none', wave: 'none' },
        b: { ...box, number: '', wave: '' },
        c: { ...box, number: '7', finish: 'none' },
      }),
    ).toEqual(['English First Box (no number)', 'English First Box', 'English First Box (7)']);
  });

  it('is called by its market where its language is not known', () => {
    expect(named({ a: { market: 'KR', edition: 'base' } }).get('a')).toMatchObject({
      title: 'South Korea, base',
      short: 'base',
    });
    expect(named({ a: { language: 'fi' } }).get('a')?.short).toBe('Finnish printing');
  });
});

const cell = fc.constantFrom('', 'none', '1', '2');
const columns = ['language', 'market', 'product', 'number', 'finish', 'edition', 'wave', 'art'];
const rows = fc.array(
  fc.record(Object.fromEntries([...columns, 'channel'].map((column) => [column, cell]))),
  { maxLength: 12 },
);

describe('names', () => {
  it('are never shared, be they long or short, whatever the rows', () => {
    fc.assert(
      fc.property(rows, (all) => {
        const names = [...namesOf(all.map((cells, j) => ({ id: `p${j}`, cells }))).values()];
        expect(new Set(names.map(({ short }) => short)).size).toBe(all.length);
        expect(new Set(names.map((one) => `${one.title}\n${one.detail}`)).size).toBe(all.length);
      }),
      { seed: 11, numRuns: 500 },
    );
  });

  it('of a row that is being entered say all that is known of it', () => {
    const cells = { language: 'pt-BR', market: 'BR', number: 'none', finish: 'foil', wave: '2' };
    expect(nameOf({ id: 'x', cells, productTitle: 'First Box' })).toEqual({
      title: 'Portuguese, First Box',
      detail: 'no number, foil, wave 2',
      short: 'Portuguese First Box',
    });
    expect(nameOf({ id: 'x', cells: {} }).title).toBe('x');
  });

  it('of languages and markets are English, and codes and words without a name stay', () => {
    expect(nameOfCode('ko', 'language')).toBe('Korean');
    expect(nameOfCode('KR', 'region')).toBe('South Korea');
    expect(nameOfCode('worldwide', 'region')).toBe('worldwide');
  });
});
