import type { DecideAnswer } from '../../contract/index.ts';
import { useBook } from '../app/context.ts';
import { useDecide } from '../wire/index.ts';
import { useAsked } from './supposed.ts';

/** What was decided for the day that is asked for, with what is supposed. */
export function useDecided(): {
  readonly answer: DecideAnswer | undefined;
  readonly error: Error | null;
  /** What is shown is not yet what was asked for. */
  readonly behind: boolean;
} {
  const { version } = useBook().dossier;
  const [{ on, supposed }] = useAsked();
  const request = on === undefined ? { supposed } : { on, supposed };
  const { data, error, isPlaceholderData } = useDecide(version, request);
  return { answer: data, error, behind: isPlaceholderData };
}
