import type { Language } from '../../chronicle/index.ts';
import type { FilmRequest, PublishRequest } from '../../contract/index.ts';
import type { Files } from '../../press/index.ts';

/** Which account: of the dossier in a folder, at a version of what is shown. */
export interface Told {
  readonly folder: string;
  readonly version: number;
  readonly prices: boolean;
}

/** What the press's thread is asked for. The first three answer files; the others write them. */
export type PressTask = Told &
  (
    | { readonly do: 'site' }
    | { readonly do: 'documents'; readonly language: Language }
    | { readonly do: 'stills'; readonly printing: string; readonly language: Language }
    | ({ readonly do: 'publish' } & PublishRequest)
    | ({ readonly do: 'film' } & FilmRequest)
  );

/** Files that were made, or what was written, in a sentence. */
export interface PressReply {
  readonly files?: Files;
  readonly said?: string;
}

/** What it tells on its way: a step with the share that is done, or what it leaves out. */
export type PressWord =
  | { readonly step: string; readonly share: number }
  | { readonly left: string };
