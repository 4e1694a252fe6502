import type { Figure } from '../figures/types.ts';
import { compareRevisions } from './compare.ts';
import type { ClaimChange, State, ToldChange, ToldRevision } from './types.ts';

/** What may be told now, by which older revisions are told too. */
export interface ToldNow {
  /** Ids of the sources that are published. */
  readonly sources: ReadonlySet<string>;
  readonly prices: boolean;
}

/**
 * The revisions of an account as readers are told of them, newest first. What stays at home now is
 * told of none, though it was told once; neither are prices, unless they are shown now.
 *
 * @param states oldest first
 */
export function historyOf(now: ToldNow, states: readonly State[]): readonly ToldRevision[] {
  const told = states.map((state, at): ToldRevision => {
    const { number, day, sha512, madeWith } = state;
    const before = states[at - 1];
    const change = before === undefined ? null : toldChange(now, before, state);
    return { number, day, sha512, madeWith, change };
  });
  return told.reverse();
}

function toldChange({ sources, prices }: ToldNow, from: State, to: State): ToldChange {
  const { files, claims: all, figures } = compareRevisions(from, to);
  const isTold = ({ before, after }: ClaimChange) =>
    [before, after].every((one) => one === null || (!one.home && sources.has(one.source)));
  const isShown = ({ name, value }: Figure) =>
    value.is === 'price'
      ? prices
      : !name.startsWith('accuracy.') || sources.has(name.slice('accuracy.'.length));
  const claims = all.filter(isTold);
  return {
    files,
    claims,
    figures: figures
      .filter(({ before, after }) => [before, after].every((one) => one === null || isShown(one)))
      .map((figure) => ({ ...figure, claims: figure.claims.filter(isTold) })),
    withheld: all.length - claims.length,
  };
}
