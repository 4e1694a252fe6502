import type { Cells, NotesAnswer } from '../../contract/index.ts';

/** A claim as it was recognised, and as the collector corrected it. */
export interface DraftClaim {
  readonly keep: boolean;
  readonly property: string;
  readonly value: string;
  /** The two readings of an ambiguous day; empty where there is one. */
  readonly choices: readonly string[];
  /** In the words of the note; empty where the note names nobody. */
  readonly source: string;
  /** Probability that the line was read as it was meant. */
  readonly p: number;
}

/** A line of the notes with what was made of it. */
export interface DraftLine {
  readonly line: number;
  readonly text: string;
  /** Which of the draft's printings it speaks of; -1 for none. */
  readonly printing: number;
  /** The line does not say which printing: heading or line above it do. */
  readonly carried: boolean;
  readonly claims: readonly DraftClaim[];
  readonly leftOver: string;
}

/** Notes on their way to a dossier. */
export interface Draft {
  readonly printings: readonly Cells[];
  readonly lines: readonly DraftLine[];
}

/** The two days of `[a,b]`; none where the value is no choice of two. */
export function choicesIn(value: string): readonly string[] {
  const inside = /^\[([^\],]+),([^\],]+)\]$/.exec(value.trim());
  return inside?.[1] && inside[2] ? [inside[1].trim(), inside[2].trim()] : [];
}

function keyOf(cells: Cells): string {
  const known = Object.entries(cells).filter(([, value]) => value !== '');
  return JSON.stringify(known.sort(([a], [b]) => (a < b ? -1 : 1)));
}

type Line = NotesAnswer['lines'][number];

/** What a line and the headings above it tell of its printing; undefined where it speaks of none. */
function printingOf({ printing, context, claims, kind }: Line): Cells | undefined {
  const silent = kind === 'heading' || kind === 'header' || kind === 'blank' || kind === 'rule';
  if (claims.length === 0 && (silent || !printing)) return undefined;
  return { ...context.printing, ...printing };
}

function tells(cells: Cells | null | undefined): boolean {
  return Object.values(cells ?? {}).some((value) => value !== '');
}

/**
 * Puts what was recognised beside the notes. Lines of one printing are brought together; a line
 * that tells nothing of its printing takes that of the heading above it, or of the line before.
 */
export function draftFrom(answer: NotesAnswer, notes: string): Draft {
  const texts = notes.split(/\r\n|\r|\n/);
  const printings: Cells[] = [];
  const at = new Map<string, number>();
  const lines: DraftLine[] = [];
  let last = -1;
  for (const line of answer.lines) {
    const cells = printingOf(line);
    if (cells && tells(cells)) {
      const key = keyOf(cells);
      last = at.get(key) ?? printings.push(cells) - 1;
      at.set(key, last);
    }
    lines.push({
      line: line.line,
      text: texts[line.line - 1] ?? '',
      printing: cells ? last : -1,
      carried: cells !== undefined && !tells(line.printing),
      claims: line.claims.map((claim) => draftClaim(claim, line.context.source)),
      leftOver: line.left_over,
    });
  }
  return { printings, lines };
}

function draftClaim(claim: Line['claims'][number], above: string | null): DraftClaim {
  const { property, value, source, p, two_way } = claim;
  const choices = two_way ? choicesIn(value) : [];
  return { keep: true, property, value, choices, source: source ?? above ?? '', p };
}

/** The draft with one line changed. */
export function withLine(draft: Draft, line: number, part: Partial<DraftLine>): Draft {
  return {
    ...draft,
    lines: draft.lines.map((one) => (one.line === line ? { ...one, ...part } : one)),
  };
}

/** The draft with one claim of a line changed. */
export function withClaim(
  draft: Draft,
  line: number,
  claim: number,
  part: Partial<DraftClaim>,
): Draft {
  const before = draft.lines.find((one) => one.line === line)?.claims ?? [];
  const claims = before.map((one, at) => (at === claim ? { ...one, ...part } : one));
  return withLine(draft, line, { claims });
}

/** The draft with cells of a printing changed; one past the last adds a printing. */
export function withPrinting(draft: Draft, at: number, part: Cells): Draft {
  const printings = [...draft.printings];
  printings[at] = { ...printings[at], ...part };
  return { ...draft, printings };
}

/** Sources that the kept claims name, in the words of the notes. */
export function sourcesIn(draft: Draft): readonly string[] {
  const words = draft.lines.flatMap(({ claims }) =>
    claims.filter(({ keep }) => keep).map(({ source }) => source.trim()),
  );
  return [...new Set(words.filter(Boolean))];
}
