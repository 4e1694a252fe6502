import { claimsOf, type PlacedClaim, type Setting } from './claims.ts';
import { type Column, columnOf } from './columns.ts';
import type { CueMeaning } from './cues.ts';
import type { Habits } from './habits.ts';
import { leftOver } from './left-over.ts';
import type { Habit } from './order.ts';
import { type Passage, passageOf } from './passage.ts';
import { printingOf } from './printing.ts';
import { runsIn } from './runs.ts';
import type { Section } from './section.ts';
import type { TextTable } from './tables.ts';
import type { NoteClaim, NoteLine, PrintingWords } from './types.ts';

const DITTO = /^(?:"|”|″|〃|''|-"-|ditto|do\.?|same|idem|dito|dto\.?|sama|samma|samme)$/iu;
const EMPTY = /^(?:|-+|–|—|\?+|n\/?a|\.+|x|none|nil|tbd|tba|unknown)$/iu;

interface Row {
  readonly index: number;
  readonly cells: readonly string[];
}

/** The order that the dates of a column show: at least two that have one reading, all alike. */
function habitShown(cells: readonly string[]): Habit | undefined {
  let [days, months] = [0, 0];
  for (const cell of cells) {
    const passage = passageOf(cell);
    for (const time of passage.times) {
      const numeric = time.style === 'slash' || time.style === 'dot' || time.style === 'hyphen';
      const part = time.parts[0]!;
      if (!numeric || time.twoWay || part.day === undefined || part.day <= 12) continue;
      const at = passage.tokens.findIndex((token, i) => i >= time.from && token.kind === 'num');
      if (Number(passage.tokens[at]?.norm) === part.day) days += 1;
      else months += 1;
    }
  }
  if (days >= 2 && months === 0) return 'day-first';
  return months >= 2 && days === 0 ? 'month-first' : undefined;
}

function datedShare(cells: readonly string[]): number {
  const filled = cells.filter((cell) => !EMPTY.test(cell));
  const dated = filled.filter((cell) => passageOf(cell).times.length > 0);
  return filled.length === 0 ? 0 : dated.length / filled.length;
}

function columnsOf(table: TextTable, known: ReadonlySet<string>, language?: string): Column[] {
  return (table.header ?? []).map((head, at) => {
    const column = columnOf(head, known, language);
    const cells = table.rows.map((row) => row.cells[at] ?? '');
    const share = datedShare(cells);
    const shown = habitShown(cells);
    const habit = column.habit ?? shown;
    const withHabit = habit ? { habit } : {};
    if (column.role === 'remark' && !column.sure && share > 0.5) {
      return { ...column, role: 'date' as const, ...withHabit };
    }
    if (column.role === 'date' && share === 0) {
      return {
        role: head.trim() === '' || !column.sure ? ('printing' as const) : column.role,
        ...withHabit,
        ...(column.meaning && { meaning: column.meaning }),
        ...(column.source && { source: column.source }),
        sure: column.sure,
      };
    }
    if (column.role === 'source' && share > 0.6)
      return { role: 'date' as const, sure: false, ...withHabit };
    return { ...column, ...withHabit };
  });
}

/** Where no head says so, the column whose cells name sources is the one of the sources. */
function withSources(
  columns: readonly Column[],
  table: TextTable,
  known: ReadonlySet<string>,
): Column[] {
  if (columns.some((column) => column.role === 'source' || column.source !== undefined))
    return [...columns];
  const share = (at: number) => {
    const cells = table.rows.map((row) => row.cells[at] ?? '').filter((cell) => !EMPTY.test(cell));
    const named = cells.filter((cell) => {
      const passage = passageOf(cell);
      return passage.printing.length === 0 && runsIn(passage, known).some((run) => run.score >= 1);
    });
    return cells.length === 0 ? 0 : named.length / cells.length;
  };
  const at = columns.findIndex(
    (column, i) => i > 0 && !column.sure && column.role !== 'date' && share(i) > 0.6,
  );
  return columns.map((column, i) => (i === at ? { ...column, role: 'source' as const } : column));
}

function own(column: Column, cell: string, words: Record<string, string>): void {
  const told = printingOf(passageOf(cell).printing);
  const { role } = column;
  if (role === 'printing' || role === 'remark') {
    for (const [name, value] of Object.entries(told ?? {})) words[name] ??= value;
    return;
  }
  const bare = cell.trim();
  if (role === 'number')
    words.number = /^(?:none|no number|unnumbered)$/iu.test(bare)
      ? 'none'
      : (told?.number ?? bare.replace(/^(?:#|no\.?|nr\.?|№)\s*/iu, ''));
  else if (role === 'wave') words.wave = /\d+/u.exec(bare)?.[0] ?? bare;
  else if (role === 'product') words.product = bare;
  else if (role === 'finish' || role === 'edition' || role === 'language' || role === 'market') {
    words[role] = told?.[role] ?? bare.toLowerCase();
    for (const [name, value] of Object.entries(told ?? {})) words[name] ??= value;
  }
}

function rowPrinting(columns: readonly Column[], cells: readonly string[]): PrintingWords | null {
  const words: Record<string, string> = {};
  columns.forEach((column, at) => {
    const cell = cells[at] ?? '';
    const none = column.role === 'number' && /^none$/iu.test(cell);
    if (none || !EMPTY.test(cell)) own(column, cell, words);
  });
  return Object.keys(words).length === 0 ? null : words;
}

function meaningIn(columns: readonly Column[], cells: readonly string[]): CueMeaning | undefined {
  const at = columns.findIndex((column) => column.role === 'what');
  if (at < 0) return undefined;
  const cues = [...passageOf(cells[at] ?? '').cues].sort((a, b) => b.rank - a.rank);
  return cues[0]?.meaning;
}

function withDittos(rows: readonly Row[], columns: readonly Column[]): Row[] {
  let above: readonly string[] = [];
  return rows.map((row) => {
    const cells = row.cells.map((cell, at) =>
      DITTO.test(cell.trim()) && columns[at]?.role !== 'idle' ? (above[at] ?? cell) : cell,
    );
    above = cells;
    return { ...row, cells };
  });
}

function sourceIn(columns: readonly Column[], cells: readonly string[]): string | undefined {
  const at = columns.findIndex((column) => column.role === 'source');
  const cell = at < 0 ? '' : (cells[at] ?? '');
  return EMPTY.test(cell) ? undefined : cell.replace(/,?\s*(?:p|pp|page|s)\.?\s*\d+$/iu, '');
}

const withoutPlace = ({ at: _at, from: _from, ...claim }: PlacedClaim): NoteClaim => claim;

/** Reads the rows of a table by the heads of its columns. */
export function readTable(
  table: TextTable,
  section: Section,
  known: ReadonlySet<string>,
  habits: Habits,
  language?: string,
): NoteLine[] {
  const columns = withSources(columnsOf(table, known, language), table, known);
  return withDittos(table.rows, columns).map((row) => {
    const told = rowPrinting(columns, row.cells);
    const rowSource = sourceIn(columns, row.cells);
    const rowMeaning = meaningIn(columns, row.cells);
    const claims: NoteClaim[] = [];
    const left: string[] = [];
    columns.forEach((column, at) => {
      const cell = row.cells[at] ?? '';
      if (
        EMPTY.test(cell) ||
        (column.role !== 'date' && column.role !== 'remark' && column.role !== 'printing')
      )
        return;
      const setting: Setting = {
        meaning:
          column.meaning ?? (column.role === 'date' ? (rowMeaning ?? section.meaning) : undefined),
        source:
          column.source ?? (column.role === 'date' ? (rowSource ?? section.source) : undefined),
        year: section.year,
        habit: column.habit ?? section.habit ?? habits.all,
        habitOf: habits.of,
        tellsPrinting: told !== null || section.printing !== null,
        kind: column.role === 'date' ? 'date-cell' : 'remark',
      };
      const passage: Passage = passageOf(cell, language);
      const reading = claimsOf(passage, setting, known);
      claims.push(...reading.claims.map(withoutPlace));
      const rest = leftOver(passage, reading.sources, 0);
      if (rest !== '' && column.role !== 'printing') left.push(rest);
    });
    return {
      line: row.index + 1,
      printing: told,
      claims,
      left_over: left.join(' '),
      kind: 'row' as const,
      context: {
        printing: section.printing,
        source: section.source ?? null,
        year: section.year ?? null,
      },
    };
  });
}
