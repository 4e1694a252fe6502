import type { Figure } from '../figures/types.ts';
import { claimChanges } from './claims.ts';
import { movedBy } from './moved.ts';
import type {
  ClaimChange,
  Difference,
  FigureChange,
  FrozenClaim,
  Revision,
  State,
} from './types.ts';

/** What changed from one revision to a later state: files, claims and figures, each with its reason. */
export function compareRevisions(from: Revision, to: State): Difference {
  const files = changedFiles(from, to);
  const claims = claimChanges(from.claims, to.claims);
  const [before, after] = [byName(from.figures), byName(to.figures)];
  const figures = [...new Set([...before.keys(), ...after.keys()])].sort().flatMap((name) => {
    const change = figureChange(before.get(name) ?? null, after.get(name) ?? null, claims, files);
    return change === null ? [] : [{ name, ...change }];
  });
  return { from: from.number, to: to.number, files, claims, figures };
}

function changedFiles({ files: a }: Revision, { files: b }: State): readonly string[] {
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
  return { before, after, claims: rests, moved, because: because(rests, keys.size, claims, files) };
}

/** Slips come of the answer; the others lead to it. */
function isCause(what: ClaimChange['what']): boolean {
  return what !== 'slip' && what !== 'no-slip' && what !== 'place';
}

function because(
  rests: readonly ClaimChange[],
  restsOn: number,
  claims: readonly ClaimChange[],
  files: readonly string[],
): string {
  if (rests.length > 0) return causes(rests);
  if (files.length === 0) return 'only the method changed: the dossier is the same';
  if (restsOn === 0 || !claims.some(({ what }) => isCause(what)))
    return `${files.join(', ')} changed`;
  return 'no claim that it rests on changed; others did, by which its sources are judged';
}

function causes(changes: readonly ClaimChange[]): string {
  const of = (what: ClaimChange['what'], side: 'before' | 'after') =>
    changes.flatMap((change) => (change.what === what ? (change[side] ?? []) : []));
  return [
    told(of('new', 'after'), 'added'),
    told(of('withdrawn', 'before'), 'withdrawn'),
    misread(of('misread', 'after')),
  ]
    .filter((part) => part !== '')
    .join('; ');
}

const NUMBERS = [
  'no',
  'one',
  'two',
  'three',
  'four',
  'five',
  'six',
  'seven',
  'eight',
  'nine',
  'ten',
];

function told(claims: readonly FrozenClaim[], what: string): string {
  const sources = new Set(claims.map(({ source }) => source)).size;
  if (sources === 0) return '';
  return `${NUMBERS[sources] ?? sources} ${sources === 1 ? 'source' : 'sources'} ${what}`;
}

function misread({ length }: readonly FrozenClaim[]): string {
  if (length === 0) return '';
  return `${NUMBERS[length] ?? length} ${length === 1 ? 'claim' : 'claims'} read anew`;
}
