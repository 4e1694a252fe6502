import { parseEdtf, sayEdtf } from '../../evidence/index.ts';

/** What a date means while it is being typed, or what is wrong with it. */
export interface ReadDate {
  readonly says: string;
  readonly wrong: string;
}

/** Reads a value as EDTF and says it in words. */
export function readDate(value: string): ReadDate {
  const text = value.trim();
  if (text === '')
    return { says: 'A day, a month or a year, as 1996-05-03, 1996-05 or 1996.', wrong: '' };
  const read = parseEdtf(text);
  if (read.ok) return { says: `It means ${sayEdtf(text)}.`, wrong: '' };
  return {
    says: `Not yet a date: ${read.expected}`,
    wrong: `The date is not one: ${read.expected}`,
  };
}
