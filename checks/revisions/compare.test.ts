import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  compareRevisions,
  type FrozenClaim,
  type Revision,
  revisionText,
} from '../../src/chronicle/index.ts';

const claim = (source: string, value: string, rest: Partial<FrozenClaim> = {}): FrozenClaim => ({
  key: `${source}.on-sale.x`,
  source,
  property: 'on-sale',
  about: 'x',
  value,
  locator: 'p. 1',
  pRight: 0.9,
  home: false,
  ...rest,
});

function revision(number: number, claims: FrozenClaim[], best: string, p: number): Revision {
  return {
    format: 1,
    number,
    day: '2026-06-30',
    sha512: 'f'.repeat(128),
    files: { 'claims.csv': JSON.stringify(claims.map(({ pRight, ...one }) => one)) },
    madeWith: 'Printlore 0.1.0',
    figures: [
      {
        name: 'release.x',
        value: { is: 'release', best, edtf: best, p, interval: null, pInterval: 1, state: 'day' },
        unit: null,
        asOf: '2026-06-30',
        claims: claims.map(({ key }) => key),
        printing: 'x',
      },
    ],
    claims,
  };
}

const list = claim('a', '1995-05-01');
const before = revision(1, [list], '1995-05-01', 0.61);
const whatOf = (...claims: FrozenClaim[]) =>
  compareRevisions(before, revision(2, claims, '1995-05-01', 0.61)).claims.map(({ what }) => what);

describe('what became of a claim', () => {
  it('is nothing where nothing changed', () => expect(whatOf(list)).toEqual([]));

  it('tells a misreading from new evidence by source and place', () => {
    expect(whatOf(claim('a', '1995-05-13'))).toEqual(['misread']);
    expect(whatOf(list, claim('b', '1995-05-13'))).toEqual(['new']);
    expect(whatOf(claim('a', '1995-05-13', { locator: 'p. 2' }))).toEqual(['new', 'withdrawn']);
    expect(whatOf(claim('a', '1995-05-01', { locator: 'p. 2' }))).toEqual(['place']);
  });

  it('tells a slip of the source where the same claim has become improbable', () => {
    expect(whatOf(claim('a', '1995-05-01', { pRight: 0.1 }))).toEqual(['slip']);
    expect(whatOf(claim('a', '1995-05-01', { pRight: 0.6 }))).toEqual([]);
  });

  it('does not hang on keys that count, which shift when a claim is put between', () => {
    const second = claim('a', '1996', { key: 'a.on-sale.x.2', locator: 'p. 9' });
    const shifted = { ...second, key: 'a.on-sale.x.3' };
    const between = claim('a', '1997', { key: 'a.on-sale.x.2', locator: 'p. 5' });
    const found = compareRevisions(
      revision(1, [list, second], '1995-05-01', 1),
      revision(2, [list, between, shifted], '1995-05-01', 1),
    );
    expect(found.claims.map(({ what, after }) => [what, after?.locator])).toEqual([
      ['new', 'p. 5'],
    ]);
  });
});

describe('why a figure changed', () => {
  const figure = (to: Revision) => compareRevisions(before, to).figures[0];

  it('says what was added, how far the day moved, and both probabilities', () => {
    const claims = [list, claim('b', '1995-05-13'), claim('c', '1995-05-13')];
    // 1995-05-01 to 1995-05-13 are twelve days.
    expect(figure(revision(2, claims, '1995-05-13', 0.97))).toMatchObject({
      because: 'two sources added',
      moved: 'release moved by 12 days, 1995-05-01 → 1995-05-13; p 0.61 → 0.97',
    });
  });

  it('counts a source once, and names what was read anew', () => {
    const claims = [
      claim('a', '1995-05-13'),
      claim('b', '1995'),
      claim('b', '1995-05', { locator: '' }),
    ];
    expect(figure(revision(2, claims, '1995-05-13', 0.61))?.because).toBe(
      'one source added; one claim read anew',
    );
  });

  it('says so where only the method changed', () => {
    expect(figure(revision(2, [list], '1995-05-02', 0.61))?.because).toBe(
      'only the method changed: the dossier is the same',
    );
  });

  it('says so where other claims changed', () => {
    const to = revision(
      2,
      [list, claim('b', '2000', { about: 'y', key: 'b.on-sale.y' })],
      '1995-05-01',
      0.7,
    );
    const own = to.figures.map((one) => ({ ...one, claims: [list.key] }));
    expect(compareRevisions(before, { ...to, figures: own }).figures[0]?.because).toContain(
      'no claim that it rests on changed',
    );
  });
});

describe('laws', () => {
  const claims = fc.uniqueArray(
    fc.record({
      source: fc.constantFrom('a', 'b'),
      value: fc.constantFrom('1', '2', '3'),
      locator: fc.constantFrom('p', 'q'),
    }),
    { selector: (one) => JSON.stringify(one), maxLength: 8 },
  );
  const frozen = (list: readonly { source: string; value: string; locator: string }[]) =>
    revision(
      1,
      list.map(({ source, value, locator }) => claim(source, value, { locator })),
      '1995-05-01',
      1,
    );

  it('every claim of both sides is kept, changed, new or withdrawn, once', () => {
    fc.assert(
      fc.property(claims, claims, (a, b) => {
        const changes = compareRevisions(frozen(a), frozen(b)).claims;
        const news = changes.filter(({ what }) => what === 'new').length;
        const gone = changes.filter(({ what }) => what === 'withdrawn').length;
        expect(a.length - gone).toBe(b.length - news);
      }),
    );
  });

  it('the other way round new and withdrawn change places', () => {
    fc.assert(
      fc.property(claims, claims, (a, b) => {
        const count = (x: typeof a, y: typeof b, one: string) =>
          compareRevisions(frozen(x), frozen(y)).claims.filter(({ what }) => what === one).length;
        expect(count(a, b, 'new')).toBe(count(b, a, 'withdrawn'));
        expect(count(a, b, 'misread')).toBe(count(b, a, 'misread'));
      }),
    );
  });

  it('a revision is read as it was written', () => {
    expect(JSON.parse(revisionText(before))).toEqual(before);
  });
});
