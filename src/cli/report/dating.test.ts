import { describe, expect, it } from 'vitest';
import type { DatedPrinting, Dating, ExplainedClaim } from '../../dating/index.ts';
import { calledIn } from './called.ts';
import { datingReport } from './dating.ts';
import { widthOf } from './width.ts';

const slip: ExplainedClaim = {
  row: 7,
  source: 'net-binder',
  property: 'on-sale',
  value: '1996-03-04',
  p_right: 0.04,
  explanation: '3 April 1996 with day and month swapped',
  reading: 'swapped',
  others: [],
  p_reading: 0.91,
  slip: true,
  span: ['1996-03-04', '1996-03-04'],
};

function printing(id: string, about: Partial<DatedPrinting>): DatedPrinting {
  return {
    id,
    best: null,
    edtf: '',
    p_best: 0,
    interval95: null,
    p_interval: 0,
    days: [],
    state: 'open',
    modes: [],
    together: [],
    claims: [],
    why: '',
    ...about,
  };
}

const dating: Dating = {
  printings: [
    printing('fi-first', {
      best: '1996-04-03',
      p_best: 0.998,
      interval95: ['1996-04-03', '1996-04-03'],
      state: 'day',
      claims: [slip],
    }),
    printing('kr-first', {
      best: '1996-05-04',
      p_best: 0.31,
      interval95: ['1996-04-28', '1996-05-11'],
      state: 'window',
      modes: [
        { from: '1996-04-28', to: '1996-05-01', p: 0.55 },
        { from: '1996-05-09', to: '1996-05-11', p: 0.45 },
      ],
    }),
    printing('br-second', {
      best: '1997-01-01',
      p_best: 0.01,
      edtf: '1996-05-05/1998',
      interval95: ['1996-05-05', '1998-12-31'],
      state: 'bounded',
    }),
    printing('fi-prize', {}),
  ],
  order: ['fi-first', 'kr-first', 'br-second', 'fi-prize'],
  first: [{ id: 'fi-first', p: 1 }],
  sequences: [
    { earlier: 'fi-first', later: 'kr-first', p: 0.999, p_same_day: 0, stated: false },
    { earlier: 'kr-first', later: 'br-second', p: 1, p_same_day: 0, stated: true },
  ],
  sources: [
    {
      id: 'net-binder',
      accuracy: 0.61,
      accuracy95: [0.42, 0.78],
      claims: 14,
      derives: [{ from: 'tide-gazette', p: 0.93 }],
      habits: [
        { reading: 'swapped', words: 'day and month swapped', share: 0.2, share95: [0.1, 0.4] },
      ],
    },
    { id: 'label', accuracy: null, accuracy95: null, claims: 2, derives: [], habits: [] },
  ],
  weekdays: [],
  leads: [
    {
      printing: 'kr-first',
      kind: 'newspaper',
      gain_bits: 1.234,
      words: 'a local newspaper of those weeks',
    },
  ],
  monte_carlo_error: 0.004,
  seed: 1,
  effort: 'refined',
};

const called = calledIn({
  printings: [
    { id: 'fi-first', language: 'fi', product: 'lake-box' },
    { id: 'kr-first', language: 'ko', product: '호수 상자' },
    { id: 'br-second', language: 'pt-BR', product: 'caixa', wave: '2' },
    { id: 'fi-prize' },
  ],
  products: [{ id: 'lake-box', title: 'Järvilaatikko' }],
  sources: [
    { id: 'net-binder', title: 'The Net Binder', kind: 'checklist', cites: [] },
    { id: 'tide-gazette', title: 'Tide Gazette', kind: 'newspaper', cites: [] },
    { id: 'label', kind: 'grading-label', cites: [] },
  ],
});

const report = (title: string, width: number) =>
  [...datingReport(dating, called, title, width)].join('');

describe('datingReport', () => {
  it('reads as a collector would', () => {
    expect(report('Murmur of the Tide', 100)).toMatchInlineSnapshot(`
      "Murmur of the Tide: 4 printings, 2 sources, 1 slip

      printing               came out            p  95 % within                after the one above
      Finnish Järvilaatikko  3 Apr 1996      >99 %  that day
      Korean 호수 상자       4 May 1996 ?     31 %  28 Apr to 11 May 1996      >99 %
          either 28 Apr to 1 May 1996 (55 %) or 9 to 11 May 1996 (45 %)
      Portuguese caixa       no dated claim         5 May 1996 to 31 Dec 1998  stated
          only what the sequence and the rest of the dossier leave
      printing fi-prize      not known
          nothing bounds it

      Seed 1: by sampling, a probability may be off by 0.4 points (standard error).

      Slips

      row  source          says        most probably
          Finnish Järvilaatikko:
        7  The Net Binder  4 Mar 1996  3 April 1996 with day and month swapped (91 %; right 4 %)

      Sources

      source          claims  right  95 %   taken from, habits
      The Net Binder      14   61 %  42–78  taken from Tide Gazette 93 %; day and month swapped 20 %
      label                2

      What to look for next

      bits  on                evidence
      1.23  Korean 호수 상자  a local newspaper of those weeks
      "
    `);
  });

  it.each([60, 80, 100])('stays within %d columns', (width) => {
    for (const line of report('조수의 속삭임', width).split('\n')) {
      expect(widthOf(line)).toBeLessThanOrEqual(width);
    }
  });
});
