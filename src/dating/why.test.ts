import { describe, expect, it } from 'vitest';
import { dayOf, type Evidence } from '../evidence/index.ts';
import type { ExplainedClaim } from './types.ts';
import { type Answer, sayWhy } from './why.ts';

const evidence: Evidence = {
  printings: [],
  products: [],
  contents: [],
  sources: [
    { id: 'notices', title: 'Shop notices', kind: 'store-listing', cites: [] },
    { id: 'list', title: 'The Long List', kind: 'checklist', cites: [] },
    { id: 'cover', title: 'Moon Monthly', kind: 'magazine', cites: [] },
  ],
  claims: [],
  orders: [],
};

const claim = (part: Partial<ExplainedClaim>): ExplainedClaim => ({
  row: 2,
  source: 'notices',
  property: 'on-sale',
  value: '1998-08-14',
  p_right: 0.99,
  explanation: 'as it says',
  reading: 'right',
  p_reading: 0.97,
  others: [],
  slip: false,
  span: ['1998-08-14', '1998-08-14'],
  ...part,
});
const slip = (part: Partial<ExplainedClaim>) => claim({ p_right: 0.01, slip: true, ...part });

const day = dayOf(1998, 8, 14);
const why = (claims: readonly ExplainedClaim[], part: Partial<Answer> = {}) =>
  sayWhy(evidence, { day, p: 0.99, from: day, to: day, state: 'day', claims, ...part });

describe('sayWhy', () => {
  it('names who names the day, and who only repeated it', () => {
    const copied = claim({ source: 'list', reading: 'copied' });
    expect(why([claim({}), copied])).toBe(
      '14 August 1998 is named by Shop notices; The Long List only repeated it.',
    );
  });

  it('says what the surest slip took for what', () => {
    const swapped = slip({
      source: 'list',
      value: '1998-08-05',
      explanation: '8 May 1998 with day and month swapped',
    });
    expect(why([claim({}), swapped])).toBe(
      '14 August 1998 is named by Shop notices. *5 August 1998 in The Long List is most probably 8 May 1998 with day and month swapped.*',
    );
    const year = slip({
      property: 'label-year',
      value: '1999',
      explanation: 'one year too late',
      p_reading: 0.4,
    });
    expect(why([claim({}), year])).toContain(
      '*The label year 1999 in Shop notices is perhaps one year too late.*',
    );
  });

  it('names, where the day is in doubt, the slip that may yet be right', () => {
    const sure = slip({ source: 'list', value: '1998-01-01' });
    const near = slip({ source: 'cover', value: '1998-08-21', p_right: 0.3 });
    expect(why([claim({}), sure, near], { p: 0.6 })).toContain(
      '*21 August 1998 in Moon Monthly may yet be right.*',
    );
    expect(why([claim({}), sure, near])).toContain('*1 January 1998 in The Long List');
  });

  it('says a day that no source names by the plan, or by what the errors point to', () => {
    const planned = claim({ property: 'announced', source: 'cover' });
    expect(why([planned])).toBe(
      'No source names 14 August 1998 as the day of sale; it was planned for then (Moon Monthly).',
    );
    expect(why([])).toBe(
      'No source names 14 August 1998; what they say, with the errors that they make, points to it.',
    );
  });

  it('says a window in words, with a bound or a cover that agrees', () => {
    const window = { state: 'window', from: dayOf(1998, 8, 3), to: dayOf(1998, 8, 20) } as const;
    const month = claim({ value: '1998-08', span: ['1998-08-01', '1998-08-31'] });
    const seen = claim({ property: 'seen-by', value: '1998-08-20', span: [null, '1998-08-20'] });
    expect(why([month, seen], window)).toBe(
      'From Shop notices no day can be had; it came out *between 3 and 20 August 1998*. It had been seen by 20 August 1998 (Shop notices).',
    );
    const cover = claim({
      property: 'cover-date',
      source: 'cover',
      value: '1998-09',
      explanation: 'the cover runs about 3 weeks ahead of sale',
    });
    expect(why([cover], window)).toBe(
      'The claims settle on no day; it came out *between 3 and 20 August 1998*. *The cover says September 1998 (Moon Monthly): the cover runs about 3 weeks ahead of sale.*',
    );
  });

  it('says what is left where no claim dates it, and that nothing is known', () => {
    const left = { state: 'bounded', from: dayOf(1998, 1, 1), to: dayOf(1999, 12, 31) } as const;
    expect(why([], left)).toBe(
      'No claim dates it. *The sequence and the rest of the dossier leave 1998 to 1999.*',
    );
    expect(why([], { state: 'open' })).toContain('Nothing in the dossier bounds this day.');
  });
});
