import type { Count, ToldClaim, ToldPicture, ToldPrice, ToldSource } from '../account/types.ts';
import { tellEdtf } from '../words/days.ts';
import { countInterval, shareInterval } from '../words/figures.ts';
import { tellAmount, tellCount, tellP, tellShare } from '../words/numbers.ts';
import type { Telling } from '../words/telling.ts';
import type { Phrases } from '../words/types.ts';
import type { SiteWords } from './words/types.ts';

/** What tables and captions are filled in with, on pages and on paper. */
export interface Filling extends Telling {
  readonly words: SiteWords;
}

/** What a claim says, property and value. */
export function claimSays({ property, value }: ToldClaim, phrases: Phrases): string {
  return `${phrases.properties[property] ?? property} ${tellEdtf(phrases, value)}`;
}

/** A trait by its name in the language where it is a column of the dossier, else as written. */
export function traitSays(trait: string, { properties }: Phrases): string {
  return properties[trait.replaceAll(' ', '_')] ?? trait;
}

/** A value of the dossier; what is known to be absent as such. */
export function valueSays(value: string, { absent }: SiteWords): string {
  return value === 'none' ? absent : value;
}

/** What a service has counted: copies, those at a top grade with their share, the day. */
export function countCells(
  count: Count,
  { phrases }: Telling,
): Record<'graded' | 'best' | 'day', string> {
  const { total, total95, top, rate, rate95, lumpedWith, asOf } = count;
  const said = tellCount(phrases, total);
  const estimated = `${phrases.vague.about(said)} (${countInterval(total95, phrases)})`;
  const share =
    rate === null ? '' : `${tellShare(phrases, rate)} (${shareInterval(rate95, phrases)})`;
  return {
    graded: lumpedWith.length > 0 ? estimated : said,
    best: rate === null ? '' : `${tellCount(phrases, top)}: ${share}`,
    day: tellEdtf(phrases, asOf),
  };
}

/** What the next copy of a kind may fetch. */
export function priceCells(
  { service, grade, median, interval80, sales }: ToldPrice,
  { account, phrases, words, service: called }: Filling,
): Record<'what' | 'next' | 'interval' | 'sales', string> {
  const money = (amount: number) => tellAmount(phrases, amount, account.currency ?? 'EUR');
  const [low, high] = interval80.map(money);
  return {
    what: service === null ? words.raw : `${called(service)} ${grade ?? ''}`,
    next: money(median),
    interval: phrases.interval(low ?? '', high ?? ''),
    sales: tellCount(phrases, sales),
  };
}

/** What a source has proved to be worth, and what it was most probably taken from. */
export function sourceCells(
  { accuracy, accuracy95, derives }: ToldSource,
  { phrases, source }: Telling,
): Record<'right' | 'from', string> {
  const interval = accuracy95 === null ? '' : ` (${shareInterval(accuracy95, phrases)})`;
  const from = derives
    .filter(({ p }) => p >= 0.5)
    .map((one) => `${source(one.from)} (${tellP(phrases, one.p)})`);
  return {
    right: accuracy === null ? '–' : `${tellShare(phrases, accuracy)}${interval}`,
    from: from.length > 0 ? from.join(', ') : '–',
  };
}

/** What a picture shows, for those who do not see it, and what stands beneath it. */
export function pictureSays(
  picture: ToldPicture,
  name: string,
  words: SiteWords,
): Record<'alternative' | 'caption', string> {
  const shows = words.shows[picture.shows === 'printing' ? picture.role : picture.shows] ?? '';
  const side = words.sides[picture.side ?? ''] ?? words.sides[''] ?? '';
  const why = picture.knownBy === null ? '' : ` ${picture.knownBy}`;
  return {
    alternative: words.alt(side, name, shows),
    caption: `${side}, ${shows}. ${words.credit(picture.by, picture.rights)}.${why}`,
  };
}
