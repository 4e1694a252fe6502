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
  /** The line does not say which printing: the one before it was taken. */
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

/** Puts what was recognised beside the notes; lines of one printing are brought together. */
export function draftFrom(answer: NotesAnswer, notes: string): Draft {
  const texts = notes.split(/\r\n|\r|\n/);
  const printings: Cells[] = [];
  const at = new Map<string, number>();
  const lines: DraftLine[] = [];
  let last = -1;
  for (const { line, printing, claims, left_over } of answer.lines) {
    const own = printing && Object.values(printing).some((value) => value !== '');
    if (own) {
      const key = keyOf(printing);
      const known = at.get(key);
      last = known ?? printings.push(printing) - 1;
      at.set(key, last);
    }
    lines.push({
      line,
      text: texts[line - 1] ?? '',
      printing: own || claims.length > 0 ? last : -1,
      carried: !own && claims.length > 0,
      claims: claims.map(({ property, value, source, p }) => ({
        keep: true,
        property,
        value,
        choices: choicesIn(value),
        source: source ?? '',
        p,
      })),
      leftOver: left_over,
    });
  }
  return { printings, lines };
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
