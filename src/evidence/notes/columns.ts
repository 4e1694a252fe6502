import type { ColumnRole } from './column-role.ts';
import type { CueMeaning } from './cues.ts';
import type { Habit } from './order.ts';
import { passageOf } from './passage.ts';
import { phraseAt, phraseBook } from './phrases.ts';
import { runsIn } from './runs.ts';
import { habitIn } from './section.ts';
import { plain, tokensOf } from './tokens.ts';
import { COLUMN_HEADS } from './words/column-heads.ts';
import { GENERIC } from './words/generic.ts';

/** A column as its head describes it. */
export interface Column {
  readonly role: ColumnRole;
  readonly meaning?: CueMeaning;
  readonly source?: string;
  readonly habit?: Habit;
  /** The head says what the column holds; otherwise its cells have to. */
  readonly sure: boolean;
}

const heads = phraseBook(COLUMN_HEADS);
const generic = new Set(Object.values(GENERIC).flatMap((row) => row.split(' ').map(plain)));

function wholeHead(text: string): ColumnRole | undefined {
  const tokens = tokensOf(text).filter((token) => !/^[.:()?]$/u.test(token.text));
  const match = phraseAt(heads, tokens, 0);
  return match && match.to === tokens.length ? match.value : undefined;
}

/** Reads the head of a column. */
export function columnOf(head: string, known: ReadonlySet<string>, language?: string): Column {
  const text = head.replace(/[*_`]/gu, '').trim();
  const habit = habitIn(text);
  const withHabit = habit ? { habit } : {};
  const whole = wholeHead(text);
  if (whole) return { role: whole, ...withHabit, sure: true };
  const passage = passageOf(text, language);
  const cue = passage.cues.find((c) => c.meaning !== 'none') ?? passage.cues[0];
  const run = runsIn(passage, known)
    .filter((r) =>
      passage.tokens.slice(r.from, r.to).some((t) => t.kind !== 'sym' && !generic.has(t.norm)),
    )
    .sort((a, b) => b.score - a.score)[0];
  if (cue) {
    if (cue.meaning === 'none') return { role: 'idle', sure: true };
    const source = run && run.score >= 2 ? { source: run.text } : {};
    return { role: 'date', meaning: cue.meaning, ...source, ...withHabit, sure: true };
  }
  if (passage.printing.length > 0 && !run) return { role: 'remark', sure: false };
  if (run) return { role: 'date', source: run.text, ...withHabit, sure: run.score >= 3 };
  return { role: 'remark', ...withHabit, sure: false };
}

/** Whether cells are heads of columns: short, without dates, and at least two that are known. */
export function isHeaderRow(cells: readonly string[], known: ReadonlySet<string>): boolean {
  if (cells.filter((cell) => cell !== '').length < 2) return false;
  if (cells.some((cell) => cell.length > 48)) return false;
  let told = 0;
  for (const cell of cells) {
    if (cell === '') continue;
    if (
      passageOf(cell).times.some(
        (time) => time.parts[0]!.year !== undefined && time.style !== 'bare',
      )
    )
      return false;
    const column = columnOf(cell, known);
    if (wholeHead(cell)) told += 2;
    else if (column.sure) told += 1;
  }
  return told >= 2;
}
