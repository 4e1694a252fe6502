import { readValue } from '../catalogue/index.ts';
import { type EdtfReading, parseEdtf, WEEKDAYS } from '../evidence/index.ts';
import { isSafeName } from './names.ts';
import type { ColumnType, PlainType } from './schema-types.ts';

/** In words what is expected in place of a cell; undefined where the cell is right. */
export type Check = (text: string) => string | undefined;

/** What checks need to know of the rest of the folder. */
export interface Surroundings {
  /** A date, read once for each text. */
  date(text: string): EdtfReading;
  /** Whether the text is a property that a claim may state. */
  isProperty(text: string): boolean;
  /** Whether an id stands in one of the tables; true where one of them is not in the folder. */
  isKnown(files: readonly string[], id: string): boolean;
}

const ID = /^[a-z0-9][a-z0-9-]*$/;

/** Well-formed as RFC 5646 says, but for the grandfathered and private tags (`rfc5646`). */
const LANGUAGE =
  /^[a-z]{2,3}(-[a-z]{3}){0,3}(-[a-z]{4})?(-([a-z]{2}|\d{3}))?(-([a-z\d]{5,8}|\d[a-z\d]{3}))*(-[a-wyz\d](-[a-z\d]{2,8})+)*(-x(-[a-z\d]{1,8})+)?$/i;

const TIME =
  /^(\d{4}-\d\d-\d\d)T([01]\d|2[0-3]):[0-5]\d(:[0-5]\d(\.\d+)?)?(Z|[+-](0\d|1[0-4]):[0-5]\d)$/;

let currencyNames: Intl.DisplayNames | undefined;

/** Codes of today and of the past, as the platform's own tables have them. */
function isCurrency(text: string): boolean {
  if (!/^[A-Z]{3}$/.test(text)) return false;
  currencyNames ??= new Intl.DisplayNames('en', { type: 'currency', fallback: 'none' });
  return currencyNames.of(text) !== undefined;
}

function isOdds(text: string): boolean {
  const match = /^(\d+(?:\.\d+)?)(?:\/(\d+(?:\.\d+)?))?$/.exec(text);
  const odds = match === null ? Number.NaN : Number(match[1]) / Number(match[2] ?? 1);
  return odds > 0 && odds <= 1;
}

function pattern(good: RegExp, expected: string): Check {
  return (text) => (good.test(text) ? undefined : expected);
}

function timeCheck(around: Surroundings): Check {
  return (text) => {
    const day = TIME.exec(text)?.[1] ?? text;
    if (around.date(day).ok) return undefined;
    return 'a time with its offset, such as 2026-03-04T18:30:00+01:00, or a day';
  };
}

function dateCheck(around: Surroundings): Check {
  return (text) => {
    const reading = around.date(text);
    return reading.ok ? undefined : reading.expected;
  };
}

const PLAIN: Readonly<Record<PlainType, (around: Surroundings) => Check>> = {
  text: () => () => undefined,
  id: () => pattern(ID, 'an id: small letters a to z, digits and hyphens, no hyphen first'),
  edtf: dateCheck,
  property: (around) => (text) =>
    around.isProperty(text)
      ? undefined
      : 'a property of claims: a kind of date, print-run, exists, or a column of printings.csv',
  weekdays: () => (text) =>
    text.split('|').every((name) => WEEKDAYS.includes(name.trim().toLowerCase()))
      ? undefined
      : 'weekdays in English with | between them, such as friday or tuesday|friday',
  money: () => pattern(/^-?\d+(\.\d+)?$/, 'an amount such as 12.50, without a sign of currency'),
  currency: () => (text) =>
    isCurrency(text) ? undefined : 'a currency code of ISO 4217, such as EUR',
  language: () => pattern(LANGUAGE, 'a language tag of BCP 47, such as fi or pt-BR'),
  number: () => pattern(/^-?\d+(\.\d+)?(e-?\d+)?$/, 'a number such as 0.19'),
  positive: () => pattern(/^(?=.*[1-9])\d+(\.\d+)?$/, 'a number above 0'),
  count: () => pattern(/^\d+$/, 'a whole number, 0 or above'),
  odds: () => (text) =>
    isOdds(text) ? undefined : 'a chance above 0 and at most 1, such as 0.25 or 1/4',
  time: timeCheck,
  path: () => (text) =>
    isSafeName(text) ? undefined : 'the path of a file inside the folder, with / between folders',
  'trait-value': () => (text) => {
    const reading = readValue(text);
    return reading.ok ? undefined : reading.expected;
  },
  sha256: () => pattern(/^[0-9a-f]{64}$/i, 'a SHA-256 checksum of 64 hexadecimal digits'),
};

function refCheck(to: readonly string[], several: boolean, around: Surroundings): Check {
  const where = to.join(', ').replace(/, ([^,]+)$/, ' or $1');
  return (text) => {
    if (around.isKnown(to, text)) return undefined;
    const ids = several ? text.split('|') : [text];
    const unknown = ids.find((id) => !around.isKnown(to, id.trim()));
    if (unknown === undefined) return undefined;
    const named = ids.length > 1 ? `; ${unknown.trim() || 'an empty part'} is none` : '';
    return several && ids.length > 1
      ? `ids of ${where} with | between them${named}`
      : `an id of ${where}`;
  };
}

/** The check of a type. */
export function checkOf(type: ColumnType, around: Surroundings): Check {
  if (type.is === 'words') {
    const { words } = type;
    const list = words.join(', ').replace(/, ([^,]+)$/, ' or $1');
    const expected = words.length > 2 ? `one of ${list}` : list;
    return (text) => (words.includes(text) ? undefined : expected);
  }
  if (type.is === 'ref') return refCheck(type.to, type.many, around);
  return PLAIN[type.is](around);
}

/** Surroundings that remember dates, since most of them stand in many rows. */
export function datesRead(limit = 200_000): (text: string) => EdtfReading {
  const known = new Map<string, EdtfReading>();
  return (text) => {
    const before = known.get(text);
    if (before !== undefined) return before;
    const reading = parseEdtf(text);
    if (known.size < limit) known.set(text, reading);
    return reading;
  };
}
