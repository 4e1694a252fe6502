import type { Account } from '../../account/types.ts';
import { type Frozen, type SaidFigure, saidFigure } from './freeze.ts';

/** A figure that was said and no longer holds. */
export interface Moved {
  readonly name: string;
  /** Ids of the lines that say it. */
  readonly lines: readonly string[];
  /** As it was said, with its doubt. */
  readonly was: string;
  /** As it is now; null where the account has it no more. */
  readonly is: string | null;
  readonly why: string;
}

/** The figures of a film that the account now tells otherwise, in the order in which they were said. */
export function movedFigures({ script, figures }: Frozen, account: Account): readonly Moved[] {
  return figures.flatMap((figure): Moved[] => {
    const { name, lines } = figure;
    const now = saidFigure(name, account, script.language);
    const was = inWords(figure);
    if (now === undefined) {
      return [{ name, lines, was, is: null, why: 'The account has no figure of this name.' }];
    }
    const is = inWords(now);
    return is === was ? [] : [{ name, lines, was, is, why: reasonOf(figure, now) }];
  });
}

function inWords({ said, doubt }: Omit<SaidFigure, 'lines'>): string {
  return doubt === '' ? said : `${said} (${doubt})`;
}

/** What came or went under it, as far as the figure itself tells. */
function reasonOf(was: Omit<SaidFigure, 'lines'>, is: Omit<SaidFigure, 'lines'>): string {
  const come = is.claims.filter((key) => !was.claims.includes(key));
  const gone = was.claims.filter((key) => !is.claims.includes(key));
  const reasons = [
    ...(come.length > 0 ? [`New claims: ${come.join(', ')}.`] : []),
    ...(gone.length > 0 ? [`Claims gone: ${gone.join(', ')}.`] : []),
    ...(was.claims.length === 0 && was.asOf !== is.asOf
      ? [`It stood as of ${was.asOf ?? 'no day'} and stands as of ${is.asOf ?? 'no day'}.`]
      : []),
  ];
  if (reasons.length > 0) return reasons.join(' ');
  return was.claims.length > 0
    ? 'It rests on the same claims, of which one was changed or all are weighed otherwise.'
    : 'What it is computed from was changed.';
}
