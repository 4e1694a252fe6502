import type { Figure } from '../figures/types.ts';
import { because } from './because.ts';
import { claimChanges } from './claims.ts';
import { movedBy } from './moved.ts';
import type { Cause, ClaimChange, Difference, FigureChange, State } from './types.ts';

/** What changed from one revision to a later state: files, claims and figures, each with its reason. */
export function compareRevisions(from: State, to: State): Difference {
  const files = changedFiles(from, to);
  const claims = claimChanges(from.claims, to.claims);
  const [before, after] = [byName(from.figures), byName(to.figures)];
  const figures = [...new Set([...before.keys(), ...after.keys()])].sort().flatMap((name) => {
    const change = figureChange(before.get(name) ?? null, after.get(name) ?? null, claims, files);
    return change === null ? [] : [{ name, ...change }];
  });
  return { from: from.number, to: to.number, files, claims, figures };
}

function changedFiles({ files: a }: State, { files: b }: State): readonly string[] {
  return [...new Set([...Object.keys(a), ...Object.keys(b)])]
    .sort()
    .filter((one) => a[one] !== b[one]);
}

function byName(figures: readonly Figure[]): ReadonlyMap<string, Figure> {
  return new Map(figures.map((figure) => [figure.name, figure]));
}

function figureChange(
  before: Figure | null,
  after: Figure | null,
  claims: readonly ClaimChange[],
  files: readonly string[],
): Omit<FigureChange, 'name'> | null {
  const moved = movedBy(before, after);
  if (moved === '') return null;
  const keys = new Set([...(before?.claims ?? []), ...(after?.claims ?? [])]);
  const rests = claims.filter(
    ({ what, before: was, after: is }) =>
      isCause(what) && (keys.has(was?.key ?? '') || keys.has(is?.key ?? '')),
  );
  const cause = causeOf(rests, keys.size, claims, files);
  return { before, after, claims: rests, moved, cause, because: because(cause) };
}

/** Slips come of the answer; the others lead to it. */
function isCause(what: ClaimChange['what']): boolean {
  return what !== 'slip' && what !== 'no-slip' && what !== 'place';
}

function causeOf(
  rests: readonly ClaimChange[],
  restsOn: number,
  claims: readonly ClaimChange[],
  files: readonly string[],
): Cause {
  if (rests.length > 0) return { is: 'claims', ...counts(rests) };
  if (files.length === 0) return { is: 'method' };
  if (restsOn === 0 || !claims.some(({ what }) => isCause(what))) return { is: 'files', files };
  return { is: 'judged' };
}

function counts(changes: readonly ClaimChange[]) {
  const of = (kind: ClaimChange['what'], side: 'before' | 'after') =>
    changes.flatMap(({ what, [side]: claim }) => (what === kind && claim ? [claim.source] : []));
  return {
    added: new Set(of('new', 'after')).size,
    withdrawn: new Set(of('withdrawn', 'before')).size,
    misread: of('misread', 'after').length,
  };
}
