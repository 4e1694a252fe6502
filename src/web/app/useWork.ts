import { useCallback, useMemo } from 'react';
import type { WireConflict } from '../../contract/index.ts';
import { type Book, bookOf } from '../view/index.ts';
import { type Step, useChange, useDating, useDossier, useEvents, useStep } from '../wire/index.ts';
import type { Clash } from './Questions.tsx';

/** The open dossier, what can be done to it, and how the server is. */
export interface Work {
  readonly book: Book | undefined;
  readonly change: (step: Step) => void;
  readonly undo: () => void;
  readonly redo: () => void;
  readonly online: boolean;
  readonly error: Error | null;
  /** Why there is no book yet. */
  readonly waiting: Error | null;
}

/** Joins everything that comes from the server; `say` speaks of what was done. */
export function useWork(
  say: (sentence: string) => void,
  trouble: (sentence: string) => void,
  clash: (clash: Clash) => void,
): Work {
  const dossier = useDossier();
  const { dating, pending, error } = useDating(dossier.data?.version);
  const outside = useCallback(
    () => say('The files were edited by another program, and read anew.'),
    [say],
  );
  const online = useEvents(outside, trouble);
  const outcome = useMemo(
    () => ({
      said: say,
      trouble,
      conflicts: (step: Step, conflicts: readonly WireConflict[]) => clash({ step, conflicts }),
    }),
    [say, trouble, clash],
  );
  const { mutate: change } = useChange(outcome);
  const { mutate: undo } = useStep('undo', outcome);
  const { mutate: redo } = useStep('redo', outcome);
  const book = useMemo(
    () => (dossier.data ? bookOf(dossier.data, dating, pending) : undefined),
    [dossier.data, dating, pending],
  );
  return {
    book,
    change: useCallback((step: Step) => change(step), [change]),
    undo: useCallback(() => undo(), [undo]),
    redo: useCallback(() => redo(), [redo]),
    online,
    error,
    waiting: dossier.error,
  };
}
