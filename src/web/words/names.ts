import type { Cells } from '../../contract/index.ts';

/** The parts of a printing's name: `title` tells most, `detail` tells it from its neighbours. */
export interface Name {
  readonly title: string;
  readonly detail: string;
}

/** The name of a language or market in English; the code itself where it has no name. */
export function nameOfCode(code: string, type: 'language' | 'region'): string {
  const shape = type === 'language' ? /^[a-z]{2,3}(-[A-Za-z0-9]+)*$/ : /^[A-Z]{2}$/;
  if (!shape.test(code)) return code;
  return new Intl.DisplayNames('en', { type, fallback: 'code' }).of(code) ?? code;
}

/** The language alone, without its region: the market tells that; a script is part of the name. */
function languageName(tag: string): string {
  const [language = tag, second = ''] = tag.split('-');
  return nameOfCode(second.length === 4 ? `${language}-${second}` : language, 'language');
}

/** Columns that are named only where they tell printings of one title apart. */
export const FINER = ['edition', 'wave', 'art'] as const;
export type Finer = (typeof FINER)[number];

/**
 * What a printing is called on screen, from its cells and the title of its product; of the finer
 * columns only those in `finer` are named.
 */
export function nameOf(
  id: string,
  cells: Cells,
  productTitle: string | undefined,
  finer: readonly Finer[] = FINER,
): Name {
  const language = cells.language ? languageName(cells.language) : '';
  const product = productTitle ?? cells.product ?? '';
  const edition = said(cells.edition);
  const wave = said(cells.wave);
  const title = [language, product && product !== 'none' ? product : edition]
    .filter(Boolean)
    .join(', ');
  const detail = [
    cells.number === 'none' ? 'no number' : (cells.number ?? ''),
    cells.finish === 'none' ? 'plain' : (cells.finish ?? ''),
    finer.includes('edition') && product && product !== 'none' ? edition : '',
    finer.includes('wave') && wave ? (/^\d+$/.test(wave) ? `wave ${wave}` : wave) : '',
    finer.includes('art') ? said(cells.art) : '',
  ].filter(Boolean);
  return { title: title || id, detail: detail.join(', ') };
}

function said(cell: string | undefined): string {
  return cell === undefined || cell === 'none' ? '' : cell;
}

/** An id made of words: lower case, hyphens, never one of `taken`. */
export function idOf(words: string, taken: ReadonlySet<string>): string {
  const plain = words
    .normalize('NFKD')
    .replace(/[\u0300-\u036f]/g, '')
    .toLowerCase()
    .replace(/[^a-z0-9]+/g, '-')
    .replace(/^-+|-+$/g, '')
    .slice(0, 60);
  const base = plain || 'x';
  for (let n = 1; ; n++) {
    const id = n === 1 ? base : `${base}-${n}`;
    if (!taken.has(id)) return id;
  }
}
