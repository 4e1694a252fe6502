import type { Population, Records } from '../../population/index.ts';
import type { Shown } from '../session.ts';

/** The populations of one state of the dossier, with what they were counted from. */
export interface Counted {
  readonly shown: Shown;
  readonly records: Records;
  readonly answer: Population;
}
