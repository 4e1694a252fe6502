import { claimsOf, type PassageReading, type PlacedClaim, type Setting } from './claims.ts';
import { isHeaderRow } from './columns.ts';
import { type Habits, habitsIn } from './habits.ts';
import { leftOver } from './left-over.ts';
import { headingForm, isRule, linesOf, type RawLine } from './lines.ts';
import { namesIn } from './names.ts';
import { joining } from './paragraphs.ts';
import { forgetPassages, type Passage, passageOf } from './passage.ts';
import { type PrintingSpan, printingOf } from './printing.ts';
import { readTable } from './read-table.ts';
import { habitIn, merged, type Section, sectionOf } from './section.ts';
import { lendSource, sourceLine } from './source-lines.ts';
import { tableAt } from './tables.ts';
import type { NoteClaim, NoteLine, NotesContext, NotesReading } from './types.ts';
import { ASKING, TASK } from './words/generic.ts';

interface Open {
  readonly section: Section;
  /** Of a heading by its form; 9 for others. */
  readonly level: number;
  readonly depth: number;
  /** A heading by its form, by a colon at its end, or a line with deeper ones beneath. */
  readonly kind: 'form' | 'colon' | 'parent';
}

interface State {
  readonly lines: readonly RawLine[];
  readonly known: ReadonlySet<string>;
  readonly habits: Habits;
  readonly language: string | undefined;
  readonly open: Open[];
  readonly out: NoteLine[];
}

/**
 * Reads notes in any shape line by line; every line of the text has its entry, from 1. A day that
 * can be read two ways stays open unless the notes settle it (`docs/methods/notes.md`). Throws
 * `TypeError` where `text` is no string. It misleads where a line says in words of its own what no
 * table here knows: such words are left over.
 */
export function readNotes(text: string, context: NotesContext = {}): NotesReading {
  if (typeof text !== 'string') throw new TypeError('notes must be a string');
  const lines = linesOf(text);
  const known = namesIn(lines, context);
  const habits = habitsIn(lines, known);
  const state: State = { lines, known, habits, language: context.language, open: [], out: [] };
  let at = 0;
  while (at < lines.length) at = step(state, at);
  forgetPassages();
  return { lines: state.out };
}

const depthOf = (line: RawLine) => line.indent * 2 + (line.bullet ? 1 : 0);

function step(state: State, at: number): number {
  const line = state.lines[at]!;
  if (line.body === '') return blank(state, at);
  const table = tableAt(state.lines, at, (cells) => isHeaderRow(cells, state.known));
  if (table) return tableLines(state, at, table);
  if (isRule(line.body)) {
    state.out.push(emptyLine(line, 'rule'));
    return at + 1;
  }
  close(state, line);
  const form = line.body.length <= 200 ? headingForm(line.body) : undefined;
  const heading = form ?? plainHeading(state, at);
  if (heading) return headingLine(state, at, heading);
  return item(state, at);
}

function emptyLine(line: RawLine, kind: NoteLine['kind']): NoteLine {
  const context = { printing: null, source: null, year: null };
  return { line: line.line, printing: null, claims: [], left_over: '', kind, context };
}

function blank(state: State, at: number): number {
  state.out.push(emptyLine(state.lines[at]!, 'blank'));
  const previous = state.out[state.out.length - 2];
  if (previous?.kind !== 'heading') {
    while (state.open.length > 0 && state.open[state.open.length - 1]!.kind !== 'form') {
      state.open.pop();
    }
  }
  return at + 1;
}

/** Closes what no longer holds for a line by its depth. */
function close(state: State, line: RawLine): void {
  const depth = depthOf(line);
  while (state.open.length > 0) {
    const top = state.open[state.open.length - 1]!;
    const out = top.kind === 'parent' ? depth <= top.depth : depth < top.depth;
    if (top.kind === 'form' || !out) break;
    state.open.pop();
  }
}

function settingOf(state: State, section: Section, body: string): Setting {
  return {
    meaning: section.meaning,
    source: section.source,
    year: section.year,
    habit: habitIn(body) ?? section.habit ?? state.habits.all,
    habitOf: state.habits.of,
    tellsPrinting: section.printing !== null,
    kind: 'line',
  };
}

function tableLines(
  state: State,
  at: number,
  table: NonNullable<ReturnType<typeof tableAt>>,
): number {
  const section = merged(state.open.slice(-DEEPEST).map((open) => open.section));
  const rows = new Map<number, NoteLine>();
  if (table.header) {
    const { known, habits, language } = state;
    for (const row of readTable(table, section, known, habits, language)) rows.set(row.line, row);
  } else {
    for (const { index, cells } of table.rows) {
      const text = cells.filter((cell) => cell !== '').join(' | ');
      for (const row of readPassage(state, [state.lines[index]!], text, section, 'row'))
        rows.set(row.line, row);
    }
  }
  for (let i = at; i < table.to; i += 1) {
    const kind = i === table.from && table.header ? 'header' : 'rule';
    state.out.push(rows.get(i + 1) ?? emptyLine(state.lines[i]!, kind));
  }
  return table.to;
}

const SHORT = 64;
/** At most so many headings and items above a line are heard. */
const DEEPEST = 12;

/** A heading that only its place, its colon or its capitals make one. */
function plainHeading(state: State, at: number): { words: string; level: number } | undefined {
  const line = state.lines[at]!;
  const next = state.lines[at + 1];
  const { body } = line;
  if (body.length > SHORT) return undefined;
  const passage = passageOf(body, state.language);
  const dayGiven = passage.times.some((time) => time.parts[0]!.day !== undefined);
  const underlined = next !== undefined && /^(?:={3,}|-{3,}|~{3,}|\*{3,})$/u.test(next.body);
  if (underlined && !line.bullet) return { words: body, level: next.body.startsWith('=') ? 1 : 2 };
  const colon = /[:：]$/u.test(body);
  const below = colon ? state.lines.slice(at + 1, at + 3).find((l) => l.body !== '') : next;
  if (!below || below.body === '' || dayGiven) return undefined;
  if (colon) return { words: body, level: 9 };
  if (line.bullet) return undefined;
  const soleYear =
    passage.times.length === 1 &&
    passage.times[0]!.from === 0 &&
    passage.times[0]!.to === passage.tokens.length;
  const shout =
    body.length > 3 &&
    body === body.toUpperCase() &&
    /\p{Lu}{3}/u.test(body) &&
    passage.times.length === 0;
  return soleYear || shout ? { words: body, level: 8 } : undefined;
}

function headingLine(state: State, at: number, heading: { words: string; level: number }): number {
  const line = state.lines[at]!;
  const section = sectionOf(heading.words, state.known, state.language);
  const kind = heading.level === 9 ? 'colon' : 'form';
  const depth = depthOf(line);
  if (kind === 'form') {
    while (state.open.length > 0) {
      const top = state.open[state.open.length - 1]!;
      if (top.kind === 'form' && top.level < heading.level) break;
      state.open.pop();
    }
  } else {
    while (state.open.length > 0) {
      const top = state.open[state.open.length - 1]!;
      if (top.kind === 'form' || top.depth < depth) break;
      state.open.pop();
    }
  }
  state.open.push({ section, level: heading.level, depth, kind });
  const { printing, source, year } = section;
  state.out.push({
    ...emptyLine(line, 'heading'),
    printing,
    context: { printing, source: source ?? null, year: year ?? null },
  });
  return at + 1;
}

function item(state: State, at: number): number {
  const first = state.lines[at]!;
  let text = first.body;
  let to = at + 1;
  const parts = [first];
  while (to < state.lines.length && parts.length < 60) {
    const how = joining(state.lines, to, first);
    if (how === 'none') break;
    text += how === 'wrap' ? `\n${state.lines[to]!.body}` : ` ¦\n${state.lines[to]!.body}`;
    parts.push(state.lines[to]!);
    to += 1;
  }
  const section = merged(state.open.slice(-DEEPEST).map((open) => open.section));
  const named = sourceLine(text);
  if (named !== undefined && !lendSource(state.out, named)) {
    const own: Section = { printing: null, source: named };
    state.open.push({ section: own, level: 9, depth: depthOf(first) - 1, kind: 'colon' });
  }
  const rows = readPassage(state, parts, text, section, 'item');
  state.out.push(...rows);
  const next = state.lines[to];
  const silent = rows.every((row) => row.claims.length === 0);
  if (next && next.body !== '' && depthOf(next) > depthOf(first)) {
    openParent(state, first, text, silent);
  }
  return to;
}

/** A line with deeper lines beneath it lends them its printing, its year and its source. */
function openParent(state: State, line: RawLine, text: string, silent: boolean): void {
  const passage = passageOf(text, state.language);
  const whole = sectionOf(text, state.known, state.language);
  const year = silent ? whole.year : passage.times.at(-1)?.parts[0]?.year;
  const bare = silent && text.length <= SHORT;
  const section: Section = {
    printing: printingOf(passage.printing),
    ...(year !== undefined && { year }),
    ...(bare && whole.source !== undefined && { source: whole.source }),
    ...(bare && whole.meaning !== undefined && { meaning: whole.meaning }),
    ...(whole.habit && { habit: whole.habit }),
  };
  state.open.push({ section, level: 9, depth: depthOf(line), kind: 'parent' });
}

function asks(body: string): boolean {
  return TASK.test(body) || (ASKING.test(body) && /\?\s*$/u.test(body));
}

/** A line that says nothing is left over as it stands. */
function rest(line: RawLine, index: number, passage: Passage, reading: PassageReading): string {
  const claims = reading.claims.some((claim) => claim.at === index);
  const told = passage.printing.some((span) => passage.tokens[span.from]!.line === index);
  return claims || told ? leftOver(passage, reading.sources, index) : line.body.slice(0, MOST_LEFT);
}

const MOST_LEFT = 400;

const toClaim = ({ at: _at, from: _from, ...claim }: PlacedClaim): NoteClaim => claim;

function readPassage(
  state: State,
  lines: readonly RawLine[],
  text: string,
  section: Section,
  kind: NoteLine['kind'],
): NoteLine[] {
  const setting = settingOf(state, section, text);
  const written = passageOf(text, state.language);
  const reading = asks(text)
    ? { passage: written, claims: [], sources: [] }
    : claimsOf(written, setting, state.known);
  const { passage } = reading;
  return lines.map((line, index) => {
    const told = (span: PrintingSpan) => passage.tokens[span.from]!.line === index;
    return {
      line: line.line,
      printing: printingOf(passage.printing.filter(told)),
      claims: reading.claims.filter((claim) => claim.at === index).map(toClaim),
      left_over: rest(line, index, passage, reading),
      kind,
      context: {
        printing: section.printing,
        source: section.source ?? null,
        year: section.year ?? null,
      },
    };
  });
}
