import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { parseEdtf } from '../edtf-parse.ts';
import { readNotes } from './index.ts';

/** Property, value and source of every claim of a single line. */
function said(line: string) {
  return readNotes(line).lines.flatMap(({ claims }) =>
    claims.map(({ property, value, source }) => [property, value, source]),
  );
}

describe('one line', () => {
  it('reads two sources with their own days', () => {
    expect(said('no. 14 foil, wave 1 – pub. page 24.9.93; checklist says oct 93')).toEqual([
      ['on-sale', '1993-09-24', 'pub. page'],
      ['on-sale', '1993-10', 'checklist'],
    ]);
  });

  it('tells the columns of the printing that the line itself tells', () => {
    const [line] = readNotes('Finnish no. 14 foil, wave 1, Brazil: 24.9.93 (Sheaf)').lines;
    expect(line?.printing).toEqual({
      language: 'fi',
      number: '14',
      finish: 'foil',
      wave: '1',
      market: 'BR',
    });
  });

  it('takes a title that the dossier has as it stands, whatever its words say elsewhere', () => {
    const titles = ['Heron & Vale product archive', 'The Marsh in Your Pocket'];
    const sources = titles.map((title, at) => {
      return { id: `s-${at}`, title, kind: 'other' as const, cites: [] };
    });
    const line =
      'no. 31, 7 May 1994 (Heron & Vale product archive), June per The Marsh in Your Pocket';
    const [read] = readNotes(line, { sources }).lines;
    expect(read?.printing).toEqual({ number: '31' });
    expect(read?.claims.map(({ source }) => source)).toEqual(titles);
  });

  it('keeps what it does not understand', () => {
    expect(readNotes('ask Mika about this').lines[0]?.left_over).toBe('ask Mika about this');
  });
});

describe('days that can be read two ways', () => {
  const open = '[1996-03-04,1996-04-03]';

  it.each([
    'English foil 3/4/96',
    'English foil 03.04.1996',
    'Brazilian foil 3-4-96',
    'German foil, Sheaf: 3/4/1996',
    'French foil, sorti le 3/4/96',
  ])('stays open: %s', (line) => {
    expect(said(line)[0]?.[1]).toBe(open);
  });

  it.each([
    ['erschienen am 3.4.1996', '1996-04-03'],
    ['English foil, Wed 3/4/96', '1996-04-03'],
    ['English foil, Monday 3/4/96', '1996-03-04'],
    ['English foil 1996/3/4', '1996-03-04'],
    ['English foil 3/4/96, i.e. 3 April 1996', '1996-04-03'],
    ['English foil 4/4/96', '1996-04-04'],
    ['English foil 24/9/93', '1993-09-24'],
    ['English foil 9/24/93', '1993-09-24'],
  ])('is settled: %s', (line, value) => {
    expect(said(line)[0]?.[1]).toBe(value);
  });

  it('follows the habit that the sheet states', () => {
    const { lines } = readNotes('All dates are day/month/year.\n\nEnglish foil 3/4/96 (Sheaf)');
    expect(lines[2]?.claims[0]?.value).toBe('1996-04-03');
  });
});

describe('no dates', () => {
  it.each([
    'English foil $19.96, R$ 12,90, 500원, ¥1996',
    'Finnish no. 14/102, KS-14, #31',
    'English foil at 10:30, 3x, 12 copies, pop 1996',
    'Brazilian foil, tel. 040 555 1996, p. 24, vol. 3 no. 7',
    'Finnish foil see https://example.invalid/1996-03-04',
    'TODO: English foil 4 March 1996?',
    'asked Mika about the Finnish foil on 4 March 1996',
    'English foil, bought two for 4.50',
    'deux versions, achetées pour 3.95',
  ])('%s', (line) => {
    expect(said(line)).toEqual([]);
  });
});

describe('a price in a line with a date', () => {
  it.each([
    ['bought two for 4.50 in 2003', ['seen-by 2003']],
    ['kjøpt for 12.50, mai 1999', ['seen-by 1999-05']],
    ['got it for 4.05 in May 1999', ['seen-by 1999-05']],
    ['announced for 4.96', ['announced 1996-04']],
    ['bought at Tollan market, 4.96', ['seen-by 1996-04']],
  ])('%s', (line, expected) => {
    const claims = readNotes(line).lines[0]!.claims;
    expect(claims.map(({ property, value }) => `${property} ${value}`)).toEqual(expected);
  });
});

describe('calendars and tongues', () => {
  // First years of the eras: Meiji 1868, Taisho 1912, Showa 1926, Heisei 1989, Reiwa 2019 (from memory).
  it.each([
    ['日本語版: 平成8年3月4日発売', '1996-03-04'],
    ['日本語版: 昭和64年1月発売', '1989-01'],
    ['日本語版: 令和元年発売', '2019'],
    ['日本語版: 大正元年8月発売', '1912-08'],
    ['日本語版: 明治45年発売', '1912'],
    ['日本語版: 平成八年三月四日発売', '1996-03-04'],
    ['한국어판: 1996년 3월 4일 출시', '1996-03-04'],
    ['Finnish: julkaistu 4. maaliskuuta 1996', '1996-03-04'],
    ['Portuguese: lançado em 4 de março de 1996', '1996-03-04'],
    ["English: out 4th of March '96", '1996-03-04'],
    ['French: sorti le 1er mars 1996', '1996-03-01'],
    ['English: spring 95', '1995-21'],
    ['English: Q3 1995', '1995-35'],
    ['English: the 90s (Sheaf)', '199X'],
    ['English: released ca. 1995', '1995~'],
    ['English: released maybe 1995', '1995?'],
    ['English: released between 3 and 10 March 1996', '1996-03-03/1996-03-10'],
    ['English: released early 1995', '1995-01/1995-04'],
  ])('%s', (line, value) => {
    expect(said(line)[0]?.[1]).toBe(value);
  });
});

describe('laws', () => {
  const scrap = fc.oneof(
    fc.string(),
    fc.string({ unit: 'binary' }),
    fc.constantFrom(
      '3/4/96',
      '24.9.93',
      'oct',
      "'96",
      '(',
      ')',
      ';',
      '|',
      '\t',
      '\n',
      '? ',
      'between ',
      ' and ',
      'Sheaf says ',
      'cover ',
      '© ',
      'per ',
      '# ',
      '== ',
      '平成',
      '年',
      '月',
      '日',
      '1996',
      '-',
      ' to ',
      '90s',
      'mid-',
      'Q3 ',
      'xx.',
      '~',
      '31 ',
      'February ',
      '29.2.',
      '1995',
      '/',
      'source: ',
      '  ',
      '* ',
    ),
  );
  const sheet = fc.array(scrap, { maxLength: 60 }).map((parts) => parts.join(''));

  it('answers every text with one entry a line, whose values are EDTF', () => {
    fc.assert(
      fc.property(sheet, (text) => {
        const { lines } = readNotes(text);
        expect(lines.map(({ line }) => line)).toEqual(
          text.split(/\r\n|\n|\r/u).map((_, index) => index + 1),
        );
        for (const { value, p } of lines.flatMap(({ claims }) => claims)) {
          expect(parseEdtf(value)).toMatchObject({ ok: true });
          expect(p).toBeGreaterThan(0);
          expect(p).toBeLessThanOrEqual(1);
        }
      }),
      { numRuns: 300 },
    );
  });

  it.each(['© 1996', '© １９９６', '© ١٩٩٦', '© १९९६', '© 𐴱𐴹𐴹𐴶'])(
    'reads the digits of any script: %s',
    (text) => {
      const [line] = readNotes(text).lines;
      expect(line?.claims.map(({ value }) => value)).toEqual(['1996']);
    },
  );

  it('reads no year in one digit that takes two units of text', () => {
    expect(readNotes('© 𐴰').lines[0]?.claims).toEqual([]);
  });

  it('says of a line that stands alone what it says of it among blank lines', () => {
    fc.assert(
      fc.property(fc.constantFrom('Finnish foil 3/4/96 (Sheaf)', 'cover says May 1996'), (line) => {
        expect(readNotes(`\n\n${line}\n\n`).lines[2]).toEqual({
          ...readNotes(line).lines[0],
          line: 3,
        });
      }),
    );
  });

  it('refuses what is no text', () => {
    expect(() => readNotes(undefined as unknown as string)).toThrow(TypeError);
  });
});
