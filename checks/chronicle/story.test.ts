import { beforeAll, describe, expect, it } from 'vitest';
import {
  type Account,
  draftOf,
  knownByIds,
  phrasesOf,
  storyFaults,
  storyValue,
  tellingOf,
} from '../../src/chronicle/index.ts';
import { toldDemo } from './account.ts';

const known = knownByIds({
  printings: new Set(['gb-first']),
  services: new Set(['ostrel']),
  sources: new Set(['reedcutter']),
});

describe('links of a story', () => {
  it('that name no known source or figure are faults with line and column', () => {
    const text =
      'A [list](source:reedcutter), a [book](source:lost).\n\n- one\n- [](value:release.gb-first) and [](value:release.gone)\n';
    expect(storyFaults('story/a.md', text, known)).toEqual([
      {
        file: 'story/a.md',
        line: 1,
        column: 32,
        found: 'source:lost',
        expected: 'source: with the id of a source that may be published',
      },
      {
        file: 'story/a.md',
        line: 4,
        column: 34,
        found: 'value:release.gone',
        expected: 'value: with the name of a figure of the account',
      },
    ]);
  });

  it('may stand apart from where they are used', () => {
    const faults = storyFaults('story/a.md', 'As [said][1].\n\n[1]: source:lost\n', known);
    expect(faults).toMatchObject([{ line: 3, column: 1, found: 'source:lost' }]);
  });

  it.each([
    ['printings', true],
    ['first', true],
    ['release.gb-first.doubt', true],
    ['release.gb-first.how', true],
    ['population.gb-first.ostrel', true],
    ['population.gb-first', false],
    ['price.gb-first', true],
    ['price.gb-first.ostrel.9.5', true],
    ['price.gb-first.ostrel', false],
    ['accuracy.reedcutter', true],
    ['accuracy.gb-first', false],
    ['gb-first.release', false],
    ['release.gb-second', false],
  ])('%s: known %s', (name, is) => {
    expect(known.value(name)).toBe(is);
  });
});

describe('drafts and values of the demo', () => {
  let account: Account;
  beforeAll(async () => {
    ({ account } = await toldDemo());
  }, 120_000);

  it('name only what the account has, and only ids that check knows', () => {
    const telling = tellingOf(account, phrasesOf('en'));
    const ids = knownByIds({
      printings: new Set(account.printings.map(({ id }) => id)),
      services: new Set(account.services.map(({ id }) => id)),
      sources: new Set(account.sources.map(({ id }) => id)),
    });
    for (const { name } of account.figures) expect(ids.value(name), name).toBe(true);
    for (const printing of account.printings) {
      const draft = draftOf(printing, telling);
      const has = (name: string) => storyValue(name, account, phrasesOf('en')) !== undefined;
      const wholly = { source: ids.source, value: has };
      expect(storyFaults('draft', draft, wholly)).toEqual([]);
    }
  });

  it('put the day of release into a draft as a link, never as a typed figure', () => {
    const monthly = account.printings.find(({ id }) => id === 'kr-monthly');
    const draft = monthly && draftOf(monthly, tellingOf(account, phrasesOf('en')));
    expect(draft).toContain(
      'It was [](value:release.kr-monthly.how) first on sale on [](value:release.kr-monthly) (probability [](value:release.kr-monthly.doubt)).',
    );
    expect(draft).toContain('[The Reedcutter Checklist](source:reedcutter) has 1 January 1998');
    expect(draft).not.toContain('20 November 1997');
  });
});
