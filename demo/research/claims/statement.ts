import type { Row } from '../../table.ts';

/**
 * How a claim truly came about in the invented world: a reading of `src/dating/types.ts`, or `fact`
 * where the claim is no date and true, `wrong` where it is no date and not true.
 */
export type Truth =
  | 'right'
  | 'next-day'
  | 'few-days'
  | 'swapped'
  | 'first-of-month'
  | 'year-off'
  | 'other-moment'
  | 'row-shift'
  | 'filled-in'
  | 'sibling'
  | 'copied'
  | 'pen'
  | 'noise'
  | 'lead'
  | 'bound'
  | 'cover-year'
  | 'fact'
  | 'wrong';

/** A row of `claims.csv` with the truth behind it. */
export interface Statement {
  readonly row: Row;
  readonly truth: Truth;
}

/** What a claim is about: `@id` for a product, else a printing or several with `|`. */
type About = string;

/** Words around a claim: locator, quote, and more columns where needed. */
interface Words {
  readonly at?: string;
  readonly quote?: string;
  readonly stated?: string;
  readonly note?: string;
}

/** Makes the claims of one source, read on one day, and stated at one time unless it says otherwise. */
export function claimsOf(
  source: string,
  readOn: string,
  stated?: string,
): (about: About, property: string, value: string, truth: Truth, words?: Words) => Statement {
  return (about, property, value, truth, words = {}) => ({
    truth,
    row: {
      ...(about.startsWith('@') ? { product: about.slice(1) } : { printing: about }),
      source,
      property,
      value,
      locator: words.at,
      quote: words.quote,
      stated_on: words.stated ?? stated,
      read_on: readOn,
      note: words.note,
    },
  });
}
