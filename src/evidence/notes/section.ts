import type { CueMeaning } from './cues.ts';
import type { Habit } from './order.ts';
import { passageOf } from './passage.ts';
import { printingOf } from './printing.ts';
import { governedBy } from './properties.ts';
import { ENOUGH, runsIn } from './runs.ts';
import { plain } from './tokens.ts';
import type { PrintingWords } from './types.ts';
import { GENERIC, IDLE_HEADING } from './words/generic.ts';
import { DAY_FIRST_HABIT, MONTH_FIRST_HABIT } from './words/source-words.ts';

/** What a heading, or a line with lines beneath it, says of those lines. */
export interface Section {
  readonly meaning?: CueMeaning;
  readonly source?: string;
  readonly year?: number;
  readonly habit?: Habit;
  readonly printing: PrintingWords | null;
}

const generic = new Set(Object.values(GENERIC).flatMap((row) => row.split(' ').map(plain)));
/** Cues too weak to make a section's property of a heading's word. */
const WEAK =
  /^(?:out|live|from|since|release|releases|released|launch|hit|street|drop|issue|release dates|dates|by|in|sold|printing|print|published|distribution|available|first)$/u;

/** The order of day and month that a text states outright, if it states one. */
export function habitIn(text: string): Habit | undefined {
  const [day, month] = [DAY_FIRST_HABIT.exec(text), MONTH_FIRST_HABIT.exec(text)];
  if (day && month) return day[0].length >= month[0].length ? 'day-first' : 'month-first';
  return day ? 'day-first' : month ? 'month-first' : undefined;
}

function sourceOf(
  words: string,
  known: ReadonlySet<string>,
  language?: string,
): string | undefined {
  const passage = passageOf(words, language);
  let best: { text: string; score: number } | undefined;
  for (const run of runsIn(passage, known)) {
    const names = passage.tokens
      .slice(run.from, run.to)
      .filter((token) => token.kind === 'word' || token.kind === 'cjk');
    if (names.every((token) => generic.has(token.norm))) continue;
    const alone = passage.printing.length === 0 && passage.roles.every((role) => role !== 'cue');
    const score = run.score + (alone && names.length <= 4 && run.score >= 1 ? 1.5 : 0);
    if (score >= ENOUGH && (!best || score > best.score)) best = { text: run.text, score };
  }
  return best?.text;
}

/** Reads a heading: the printing, the source, the year or the property that it sets. */
export function sectionOf(words: string, known: ReadonlySet<string>, language?: string): Section {
  const text = words.replace(/[:：]\s*$/u, '');
  const passage = passageOf(text, language);
  const source = sourceOf(text, known, language);
  const habit = habitIn(text);
  const governed = governedBy(passage);
  const dated = passage.times.find(
    (time, at) => time.parts[0]?.year !== undefined && governed[at]?.meaning !== 'none',
  );
  const year = dated?.parts[0]?.year;
  const cue = passage.cues.find((c) => {
    const norm = passage.tokens
      .slice(c.from, c.to)
      .map((token) => token.norm)
      .join(' ');
    return !WEAK.test(norm) && !c.touching && c.meaning !== 'none';
  });
  const idle = IDLE_HEADING.test(text) && source === undefined;
  return {
    ...(idle ? { meaning: 'none' as const } : cue && { meaning: cue.meaning }),
    ...(source !== undefined && { source }),
    ...(year !== undefined && { year }),
    ...(habit && { habit }),
    printing: printingOf(passage.printing),
  };
}

/** The sections that hold at a place, the outermost first, as one. */
export function merged(sections: readonly Section[]): Section {
  let whole: Section = { printing: null };
  for (const section of sections) {
    const printing = section.printing ? { ...whole.printing, ...section.printing } : whole.printing;
    whole = { ...whole, ...section, printing };
  }
  return whole;
}
