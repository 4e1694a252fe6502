import type { Language } from '../../chronicle/index.ts';

/** What `film` was called with. */
export interface FilmOptions {
  readonly out?: string;
  /** `oldest`, `newest`, or a file with ids. */
  readonly order?: string;
  readonly language?: Language;
  /** Words a minute. */
  readonly rate?: number;
  /** File of marks that were set while recording. */
  readonly marks?: string;
  /** File of the recording, as the edit names it. */
  readonly recording?: string;
  readonly prices?: boolean;
  /** Folder or file of a film that was made, whose figures are compared. */
  readonly check?: string;
  /** With `marks`: writes what was seen on film to the desk. */
  readonly write?: boolean;
}
