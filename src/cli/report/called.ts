import { type Evidence, printingCalled } from '../../evidence/index.ts';

/** What the printings and sources of a dossier are called in a report, by their ids. */
export interface Called {
  readonly printing: (id: string) => string;
  readonly source: (id: string) => string;
}

/** Printings by their short names, sources by their titles; the id where there is none. */
export function calledIn(evidence: Pick<Evidence, 'printings' | 'products' | 'sources'>): Called {
  const titles = new Map(evidence.sources.map(({ id, title }) => [id, title]));
  return { printing: printingCalled(evidence), source: (id) => titles.get(id) ?? id };
}
