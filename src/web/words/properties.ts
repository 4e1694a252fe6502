/** What a claim may be about, as the form and the lists name it. */
export interface PropertyWords {
  readonly property: string;
  readonly name: string;
  readonly means: string;
  /** The value is a date in EDTF. */
  readonly date: boolean;
}

const DATES: readonly (readonly [string, string, string])[] = [
  ['on-sale', 'on sale', 'the day it could first be had'],
  ['announced', 'announced for', 'a day planned before it came'],
  ['cover-date', 'cover date', 'the date on the cover of the periodical'],
  ['label-year', 'label year', 'the year on a service’s label'],
  ['copyright-year', 'copyright year', 'the year printed in its copyright line'],
  ['printed-on', 'printed on', 'the day it was printed'],
  ['seen-by', 'seen by', 'released on or before the last day of this'],
  ['not-before', 'not before', 'released on or after the first day of this'],
  ['unlisted-on', 'unlisted on', 'a list of that day has the like but not this one'],
  ['distributed-until', 'distributed until', 'the last day it was given out'],
];
const OTHERS: readonly (readonly [string, string, string])[] = [
  ['number', 'number', 'the number it bears, or none'],
  ['finish', 'finish', 'foil, plain …'],
  ['edition', 'edition', 'the edition it belongs to'],
  ['wave', 'wave', 'the print wave'],
  ['product', 'product', 'what it was sold or given in'],
  ['market', 'market', 'where it was released'],
  ['language', 'language', 'the language it is printed in'],
  ['rarity', 'rarity', 'the rarity it is given'],
  ['exists', 'exists', 'yes or no'],
  ['print-run', 'print run', 'how many were printed'],
];

/** Every property the form offers, dates first. */
export const PROPERTIES: readonly PropertyWords[] = [
  ...DATES.map(([property, name, means]) => ({ property, name, means, date: true })),
  ...OTHERS.map(([property, name, means]) => ({ property, name, means, date: false })),
];

/** The name of a property; the property itself where the form does not offer it. */
export function propertyName(property: string): string {
  return PROPERTIES.find((known) => known.property === property)?.name ?? property;
}

/** Whether the value of a property is a date. */
export function isDateProperty(property: string): boolean {
  return PROPERTIES.some((known) => known.property === property && known.date);
}
