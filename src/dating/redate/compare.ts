import type { Claim, Evidence } from '../../evidence/index.ts';

/** Claims that stay as they are, `from` up to but not including `to`; their rows move by `rows`. */
export interface Run {
  readonly from: number;
  readonly to: number;
  readonly rows: number;
}

/** The claims of changed evidence in their order: runs of those there were, and new ones. */
export type ClaimsChange = readonly (Run | Claim)[];

/** Whether a piece of a change is a claim that is new. */
export function isClaim(piece: Run | Claim): piece is Claim {
  return 'source' in piece;
}

/** Claims beside each other that may have changed, and that may have changed in all. */
const MOST_TOGETHER = 16;
const MOST_CLAIMS = 100;

/**
 * How the claims of a dossier have changed, as far as dates go by them; undefined where something
 * else changed too, or so many claims that the dossier is better dated anew.
 */
export function compareClaims(before: Evidence, after: Evidence): ClaimsChange | undefined {
  const tables = ['printings', 'products', 'contents', 'sources', 'orders', 'weekdays'] as const;
  if (!tables.every((table) => isSame(before[table], after[table]))) return undefined;
  const pieces: (Run | Claim)[] = [];
  let changed = 0;
  let i = 0;
  let j = 0;
  while (i < before.claims.length || j < after.claims.length) {
    const meeting = nextMeeting(before.claims, i, after.claims, j);
    if (!meeting) return undefined;
    changed += meeting.gone + meeting.come;
    if (changed > MOST_CLAIMS) return undefined;
    i += meeting.gone;
    for (const end = j + meeting.come; j < end; j++) pieces.push(after.claims[j]!);
    const run = runFrom(before.claims, i, after.claims, j);
    if (run.to === run.from) continue;
    pieces.push(run);
    j += run.to - i;
    i = run.to;
  }
  return pieces;
}

/** How many claims go, and how many come, until both sides agree again or end. */
function nextMeeting(before: readonly Claim[], i: number, after: readonly Claim[], j: number) {
  for (let all = 0; all <= 2 * MOST_TOGETHER; all++) {
    for (let gone = 0; gone <= all; gone++) {
      const a = before[i + gone];
      const b = after[j + all - gone];
      const over = i + gone === before.length && j + all - gone === after.length;
      if (over || (a && b && saysTheSame(a, b))) return { gone, come: all - gone };
    }
  }
  return undefined;
}

/** The longest run of claims from here that both sides share, its rows moved by the same number. */
function runFrom(before: readonly Claim[], i: number, after: readonly Claim[], j: number): Run {
  const rows = i < before.length && j < after.length ? after[j]!.row - before[i]!.row : 0;
  let n = 0;
  for (; i + n < before.length && j + n < after.length; n++) {
    const a = before[i + n]!;
    const b = after[j + n]!;
    if (b.row - a.row !== rows || !saysTheSame(a, b)) break;
  }
  return { from: i, to: i + n, rows };
}

/** Whether two claims say the same of the same printings, where they stand apart. */
function saysTheSame(a: Claim, b: Claim): boolean {
  if (a === b) return true;
  return (
    a.value === b.value &&
    a.source === b.source &&
    a.property === b.property &&
    a.product === b.product &&
    a.date?.text === b.date?.text &&
    isSameList(a.printings, b.printings)
  );
}

function isSameList(a: readonly string[], b: readonly string[]): boolean {
  if (a.length !== b.length) return false;
  for (let i = 0; i < a.length; i++) if (a[i] !== b[i]) return false;
  return true;
}

/** Whether two values of text, numbers, lists and plain objects are equal through and through. */
function isSame(a: unknown, b: unknown): boolean {
  if (a === b) return true;
  if (typeof a !== 'object' || typeof b !== 'object' || !a || !b) return false;
  const keys = Object.keys(a);
  if (keys.length !== Object.keys(b).length) return false;
  return keys.every((key) => isSame(a[key as never], b[key as never]));
}
