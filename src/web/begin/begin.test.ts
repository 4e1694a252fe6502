import { describe, expect, it } from 'vitest';
import type { NotesAnswer } from '../../contract/index.ts';
import { choicesIn, draftFrom, sourcesIn, withClaim, withLine, withPrinting } from './draft.ts';
import { kindOf, toChanges } from './toChanges.ts';

const NOTES =
  'no. 14 foil – pub. page 24.9.93\n\nchecklist: oct 93\nko 15 seen 3/4/96\nno. 14 foil again 1993';

type Line = NotesAnswer['lines'][number];

function line(at: number, printing: Line['printing'], ...said: [string, string, string | null][]) {
  return {
    line: at,
    printing,
    claims: said.map(([property, value, source]) => {
      return { property, value, source, p: 0.9, words: '', two_way: value.startsWith('[') };
    }),
    left_over: '',
    kind: 'item' as const,
    context: { printing: null, source: null, year: null },
  };
}

const ANSWER: NotesAnswer = {
  lines: [
    line(1, { number: '14', finish: 'foil' }, ['on-sale', '1993-09-24', 'pub. page']),
    { ...line(2, null), kind: 'blank' },
    line(3, null, ['on-sale', '1993-10', 'checklist']),
    line(4, { language: 'ko', number: '15' }, ['seen-by', '[1996-03-04,1996-04-03]', null]),
    line(5, { finish: 'foil', number: '14', language: '' }, ['on-sale', '1993', 'checklist']),
  ],
};

describe('notes on their way to a dossier', () => {
  const draft = draftFrom(ANSWER, NOTES);

  it('bring lines of one printing together, and say where a printing was carried on', () => {
    expect(draft.printings).toHaveLength(2);
    expect(draft.lines.map(({ printing }) => printing)).toEqual([0, -1, 0, 1, 0]);
    expect(draft.lines.map(({ carried }) => carried)).toEqual([false, false, true, false, false]);
    expect(draft.lines[3]?.text).toBe('ko 15 seen 3/4/96');
  });

  it('take from a heading what a line does not tell, and make no printing of the heading', () => {
    const context = { printing: { language: 'fi' }, source: 'album', year: null };
    const heading = { ...line(1, { language: 'fi' }), kind: 'heading' as const };
    const item = { ...line(2, { number: '3' }, ['on-sale', '1993', null]), context };
    const under = draftFrom({ lines: [heading, item] }, '# Finnish\n3: 1993');
    expect(under.printings).toEqual([{ language: 'fi', number: '3' }]);
    expect(under.lines.map(({ printing }) => printing)).toEqual([-1, 0]);
    expect(sourcesIn(under)).toEqual(['album']);
  });

  it('leave an ambiguous day open until the collector chooses', () => {
    expect(draft.lines[3]?.claims[0]?.choices).toEqual(['1996-03-04', '1996-04-03']);
    expect(choicesIn('1996-03-04')).toEqual([]);
    const open = toChanges(draft).filter(({ after }) => after?.value?.startsWith('['));
    expect(open).toHaveLength(1);
    const chosen = toChanges(withClaim(draft, 4, 0, { value: '1996-04-03' }));
    expect(chosen.some(({ after }) => after?.value === '1996-04-03')).toBe(true);
  });

  it('become rows that refer to each other', () => {
    const changes = toChanges(draft);
    const ids = (file: string) =>
      changes.filter((change) => change.file === file).map(({ after }) => after?.id);
    expect(ids('printings.csv')).toEqual(
      ['14-foil', 'korean-15'].map((id) => expect.stringContaining(id.slice(-2))),
    );
    expect(new Set(ids('sources.csv'))).toEqual(new Set(['pub-page', 'checklist', 'my-notes']));
    for (const { file, after } of changes) {
      if (file !== 'claims.csv') continue;
      expect(ids('printings.csv')).toContain(after?.printing);
      expect(ids('sources.csv')).toContain(after?.source);
      expect(after?.locator).toMatch(/^notes, line \d$/);
    }
  });

  it('leave out what was struck, and lines of no printing', () => {
    const less = withLine(withClaim(draft, 1, 0, { keep: false }), 4, { printing: -1 });
    const claims = toChanges(less).filter(({ file }) => file === 'claims.csv');
    expect(claims).toHaveLength(2);
    expect(sourcesIn(less)).toEqual(['checklist']);
  });

  it('take a printing made whole by hand', () => {
    const whole = withPrinting(draft, 0, { language: 'en' });
    expect(toChanges(whole)[0]?.after).toMatchObject({ language: 'en', number: '14' });
  });

  it('guess the kind of a source only from its own words', () => {
    expect(['pub. page', 'checklist', 'Anna'].map(kindOf)).toEqual([
      'publisher-database',
      'checklist',
      'other',
    ]);
  });
});
