import {
  type Account,
  type ClaimChange,
  type Figure,
  type FrozenClaim,
  historyOf,
  type State,
  type ToldRevision,
} from '../../src/chronicle/index.ts';

const claim = (source: string, value: string, rest: Partial<FrozenClaim> = {}): FrozenClaim => ({
  key: `${source}.on-sale.kr-club`,
  source,
  property: 'on-sale',
  about: 'kr-club',
  value,
  locator: 'p. 4',
  pRight: 0.9,
  home: false,
  ...rest,
});

function state(number: number | null, rest: Pick<State, 'claims' | 'figures' | 'files'>): State {
  const sha512 = String(number ?? 9).repeat(128);
  return {
    format: 1,
    number,
    day: `2026-0${number ?? 9}-01`,
    sha512,
    madeWith: 'Printlore',
    ...rest,
  };
}

/** Every kind of change to claims that a revision can hold. */
export const KINDS: readonly ClaimChange['what'][] = [
  'new',
  'withdrawn',
  'misread',
  'place',
  'slip',
  'no-slip',
];

/** Figures of an account with those that can move moved. */
function movedFigures({ figures }: Account): Figure[] {
  return figures.map((figure): Figure => {
    const { value } = figure;
    if (value.is === 'count') return { ...figure, value: { ...value, count: value.count + 7 } };
    if (value.is === 'share') return { ...figure, value: { ...value, share: value.share / 2 } };
    return figure;
  });
}

/**
 * Two revisions of an account and a proof: a claim of every kind of change by a source of the demo,
 * one of a source that stays at home, and one of a source that is gone.
 */
export function changedOnce(account: Account): readonly ToldRevision[] {
  const [a, b, c] = account.sources.map(({ id }) => id) as [string, string, string];
  const secret = claim('secret', '2001-01-01', { home: true });
  const before = [
    claim(a, '2001-04-01'),
    claim(b, '2001-04-02', { about: 'kr-club|kr-starter' }),
    claim(c, '2001-04-03', { pRight: 0.9 }),
    claim(a, '2001-04-04', { locator: 'p. 7', pRight: 0.2 }),
    claim(b, '2001-04-05', { locator: 'p. 8' }),
  ];
  const after = [
    claim(a, '2001-04-11'),
    claim(b, '2001-04-02', { about: 'kr-club|kr-starter', locator: 'p. 5' }),
    claim(c, '2001-04-03', { pRight: 0.1 }),
    claim(a, '2001-04-04', { locator: 'p. 7', pRight: 0.8 }),
    claim('gone', '2001-04-06'),
    claim(c, '<b>2001</b>', { locator: '“p. 9”' }),
    secret,
  ];
  const first = state(1, {
    claims: before,
    figures: account.figures,
    files: { 'claims.csv': '1' },
  });
  const moved = movedFigures(account);
  const second = state(2, { claims: after, figures: moved, files: { 'claims.csv': '2' } });
  const now = { sources: new Set(account.sources.map(({ id }) => id)), prices: true };
  return historyOf(now, [first, second, { ...second, number: null, day: '2026-09-01' }]);
}
