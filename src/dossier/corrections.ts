import { type Correction, creditOf, isBareConsent } from '../chronicle/index.ts';
import { FATE, FaultList } from './faults.ts';
import { rowsOf } from './rows-of.ts';
import type { Dossier, Fault } from './types.ts';

const FILE = 'corrections.csv';
/** What can become of what a reader wrote. */
const STATES = ['open', 'accepted', 'declined', 'answered'];
const SHOWN = 'It is shown as written.';
const NOT_SHOWN = 'No name is shown.';

/** What readers wrote and what came of it, as it stands; a reader's name only with consent. */
export function correctionsOf(dossier: Dossier): Correction[] {
  return rowsOf(dossier, FILE, (cell) => ({
    id: cell('id'),
    received: cell('received'),
    credit: creditOf(cell('credit')),
    says: cell('says'),
    about: cell('about'),
    answer: cell('answer'),
    state: cell('state') || 'open',
    revision: cell('revision'),
  }));
}

/**
 * What is wrong with the corrections: a state that is none, one that is settled without an answer, a
 * revision that is not there, and consent to be thanked without a name.
 *
 * @param frozen numbers of the revisions; the next one may be named before it is published
 */
export function correctionFaultsIn(dossier: Dossier, frozen: readonly number[]): Fault[] {
  const faults = new FaultList();
  const next = Math.max(0, ...frozen) + 1;
  const revisions = new Set([...frozen, next].map(String));
  rowsOf(dossier, FILE, (cell, row) => {
    const wrong = (column: string, expected: string, fate: string = FATE.kept) =>
      faults.add({ file: FILE, row, column, found: cell(column), expected, fate });
    const [state, revision] = [cell('state'), cell('revision').replace(/^none$/, '')];
    if (state !== '' && !STATES.includes(state))
      wrong('state', `${STATES.slice(0, -1).join(', ')} or ${STATES.at(-1)}`, SHOWN);
    else if (state !== '' && state !== 'open' && cell('answer') === '')
      wrong('answer', `an answer, since the state is ${state}`);
    if (revision !== '' && !revisions.has(revision)) wrong('revision', revisionsUpTo(next));
    if (isBareConsent(cell('credit')))
      wrong('credit', 'the name under which the reader agreed to be thanked, or none', NOT_SHOWN);
  });
  return faults.sorted();
}

function revisionsUpTo(next: number): string {
  return next === 1 ? '1, the first to be published' : `a revision from 1 to ${next}, the next one`;
}
