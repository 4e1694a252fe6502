import type { DossierTable } from '../leaving/types.ts';

/** What the Citation Style Language calls each kind of source (CSL 1.0.2, appendix III). */
const TYPES: Readonly<Record<string, string>> = {
  'publisher-database': 'webpage',
  magazine: 'article-magazine',
  book: 'book',
  'press-release': 'document',
  advertisement: 'document',
  newspaper: 'article-newspaper',
  checklist: 'document',
  forum: 'post',
  video: 'motion_picture',
  'archive-snapshot': 'webpage',
  correspondence: 'personal_communication',
};

/** A source as CSL-JSON. */
interface CslItem {
  readonly id: string;
  readonly type: string;
  readonly title: string;
  readonly note?: string;
  readonly URL?: string;
  readonly accessed?: { readonly 'date-parts': readonly (readonly number[])[] };
}

/** The sources that may be shared as CSL-JSON, a list of items in the order of the table. */
export function cslOf(tables: readonly DossierTable[]): readonly CslItem[] {
  const rows = tables.find(({ file }) => file === 'sources.csv')?.rows ?? [];
  return rows.map(({ cells }) => {
    const [title, citation, url, archived] = ['title', 'citation', 'url', 'archived'].map(
      (column) => cells[column] ?? '',
    );
    const kept = archived ? `Kept at ${archived}` : '';
    const note = [citation, kept].filter(Boolean).join('. ');
    const day = /^(\d{4})-(\d\d)-(\d\d)$/.exec(cells['accessed'] ?? '');
    return {
      id: cells['id'] ?? '',
      type: TYPES[cells['kind'] ?? ''] ?? 'document',
      title: title || cells['id'] || '',
      ...(note ? { note } : {}),
      ...(url ? { URL: url } : {}),
      ...(day ? { accessed: { 'date-parts': [day.slice(1).map(Number)] } } : {}),
    };
  });
}
