import { FILTER_COLUMNS, type Filter } from '../view/index.ts';

/** What the address of the chronology holds besides the screen; all of it may be missing. */
export interface ChronologySearch {
  readonly printing?: string;
  readonly order?: 'dossier';
  readonly language?: readonly string[];
  readonly market?: readonly string[];
  readonly finish?: readonly string[];
  readonly source?: readonly string[];
}

function words(value: unknown): readonly string[] {
  return Array.isArray(value) ? value.filter((word) => typeof word === 'string') : [];
}

/** Reads an address; what does not belong in it is left out. */
export function readSearch(search: Record<string, unknown>): ChronologySearch {
  const lists = FILTER_COLUMNS.map((column) => [column, words(search[column])] as const);
  return {
    ...(typeof search.printing === 'string' ? { printing: search.printing } : {}),
    ...(search.order === 'dossier' ? { order: 'dossier' as const } : {}),
    ...Object.fromEntries(lists.filter(([, list]) => list.length > 0)),
  };
}

/** The filter that an address asks for. */
export function filterOf(search: ChronologySearch): Filter {
  return {
    language: search.language ?? [],
    market: search.market ?? [],
    finish: search.finish ?? [],
    source: search.source ?? [],
    order: search.order ?? 'release',
  };
}

/** The address for a filter and the printing that is open. */
export function searchOf(filter: Filter, printing: string | undefined): ChronologySearch {
  const { order, ...lists } = filter;
  return {
    ...(printing === undefined ? {} : { printing }),
    ...(order === 'dossier' ? { order } : {}),
    ...Object.fromEntries(Object.entries(lists).filter(([, list]) => list.length > 0)),
  };
}
