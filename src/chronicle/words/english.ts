import { ENGLISH_NAMES } from '../../catalogue/index.ts';
import { monthName, sayList } from '../../evidence/index.ts';
import type { Phrases } from './types.ts';

const many = (n: number, one: string, more = `${one}s`) => (n === 1 ? one : more);

/** Plain English; months and days as British English writes them. */
export const ENGLISH: Phrases = {
  language: 'en',
  locale: 'en-GB',
  calendar: {
    day: (year, month, day) => `${day} ${monthName(month)} ${year}`,
    month: (year, month) => `${monthName(month)} ${year}`,
    year: String,
    dayAlone: String,
    monthDay: (month, day) => `${day} ${monthName(month)}`,
    monthAlone: (month) => monthName(month),
    yearFirst: false,
  },
  vague: {
    between: (from, to) => `between ${from} and ${to}`,
    run: (from, to) => `${from} to ${to}`,
    until: (day) => `until ${day}`,
    since: (day) => `from ${day} on`,
    about: (day) => `about ${day}`,
    perhaps: (day) => `perhaps ${day}`,
    anyDay: 'any day',
  },
  names: ENGLISH_NAMES,
  certainty: {
    'almost-certain': 'almost certainly',
    'most-probable': 'most probably',
    probable: 'probably',
    perhaps: 'perhaps',
  },
  list: sayList,
  asOf: (value, day) => `${value} (as of ${day})`,
  interval: (low, high) => `between ${low} and ${high}`,
  units: {
    printings: (n, one) => `${n} ${one ? 'printing' : 'printings'}`,
    sources: (n, one) => `${n} ${one ? 'source' : 'sources'}`,
    claims: (n, one) => `${n} ${one ? 'claim' : 'claims'}`,
    copies: (n, one) => `${n} ${one ? 'copy' : 'copies'}`,
  },
  sentences: {
    onDay: (how, day, p) => `It was ${how} first on sale on ${day} (probability ${p}).`,
    within: (from, to, p) => `It was first on sale between ${from} and ${to} (probability ${p}).`,
    withinOne: (when, p) => `It was first on sale in ${when} (probability ${p}).`,
    leftBetween: (when) => `No claim dates it; what else is known leaves ${when}.`,
    noLater: (day) => `It was first on sale no later than ${day}; nothing bounds it from before.`,
    noEarlier: (day) =>
      `It was first on sale no earlier than ${day}; nothing bounds it from after.`,
    open: 'Nothing in the evidence bounds the day on which it was first on sale.',
    eitherOr: (modes) =>
      `The evidence can be read in more than one way: ${sayList(
        modes.map(([when, p]) => `${when} (${p})`),
        'or',
      )}.`,
    together: (others) => `By the evidence so far it came out together with ${others}.`,
    first: (how, of, p) => `It is ${how} the earliest of ${of} (probability ${p}).`,
    place: (place, of, how, after, p) =>
      `It is number ${place} of ${of} in the order of release; it came ${how} after ${after} (probability ${p}).`,
    placeStated: (place, of, after) =>
      `It is number ${place} of ${of} in the order of release; that it came after ${after} is stated as certain.`,
    slip: (source, value, explanation, p) =>
      `${source} has ${value}: ${explanation} (probability that it is right: ${p}).`,
    mayBeRight: (source, value, p) =>
      `${source} has ${value}, which may yet be right (probability ${p}).`,
    labelYear: (source, value, years) =>
      `Slabs of this printing carry ${value} (${source}), ${Math.abs(years)} ${many(Math.abs(years), 'year')} too ${years > 0 ? 'late' : 'early'}.`,
    counted: (service, n, count, day) =>
      `${service} had graded ${count} ${many(n, 'copy', 'copies')} by ${day}.`,
    estimated: (service, count, interval, day, lumped) =>
      `${service} had graded about ${count} (${interval}) by ${day}, counted together with ${lumped}.`,
    topRate: (count, share, interval) =>
      `At a top grade: ${count}, ${share} of them (${interval}); these are copies that owners chose to send in.`,
    extant: (count, interval, seen, again) =>
      `About ${count} certified copies can turn up (${interval}), judged from ${seen} certificates seen, ${again} of them again.`,
    extantLower: (count, interval, seen, again) =>
      `At least about ${count} certified copies can turn up (${interval}), judged from ${seen} certificates seen, ${again} of them again.`,
    price: (what, amount, interval, sales) =>
      `${what}: the next sale may be at ${amount}; 8 of 10 lie ${interval}. From ${sales} ${many(sales, 'sale')} of this kind; no promise.`,
    raw: 'Raw',
    graded: (service, grade) => `${service} ${grade}`,
  },
  readings: {
    right: 'as it says',
    'next-day': 'a day off, as across the date line',
    'few-days': 'a few days off',
    swapped: 'day and month swapped',
    'first-of-month': 'the first of the month in place of the day',
    'year-off': 'the right day in the wrong year',
    'other-moment': 'another moment of the same release',
    'row-shift': 'a row off in its table',
    'filled-in': 'one day filled in for many',
    'cover-date': 'the date on the cover taken for the day of sale',
    sibling: 'the day of another release of the same product',
    copied: 'taken from another source with its slip',
    pen: 'a slip of the pen',
    noise: 'simply wrong: no known slip explains it',
    lead: 'a plan, which came at another time',
    bound: 'a bound on the day',
    'cover-year': 'the year of the cover taken for that of release',
  },
  properties: {
    'on-sale': 'on sale',
    announced: 'announced for',
    'cover-date': 'cover date',
    'label-year': 'label year',
    'copyright-year': 'copyright year',
    'printed-on': 'printed on',
    'seen-by': 'seen by',
    'not-before': 'not before',
    'unlisted-on': 'not yet listed on',
    'distributed-until': 'distributed until',
    'print-run': 'print run',
    number: 'number',
    finish: 'finish',
    edition: 'edition',
    wave: 'print wave',
    product: 'product',
    market: 'market',
    language: 'language',
    rarity: 'rarity',
    exists: 'exists',
    art: 'art',
    channel: 'channel',
    printed_name: 'printed name',
    printed_in: 'printed in',
  },
};
