import type { DossierTable } from '../leaving/types.ts';

/** An annotation of the Web Annotation Data Model. */
interface Annotation {
  readonly '@context': 'http://www.w3.org/ns/anno.jsonld';
  readonly id: string;
  readonly type: 'Annotation';
  readonly motivation: 'describing' | 'identifying';
  readonly body: {
    readonly type: 'TextualBody';
    readonly value: string;
    readonly format: 'text/plain';
  };
  readonly target: string | { readonly source: string; readonly selector: object };
}

/**
 * Claims whose source has an address, as notes on the quoted words there, and traits with a region,
 * as notes on that part of the card's face, in per cent of its width and height (`sanderson:2017`).
 */
export function annotationsOf(
  tables: readonly DossierTable[],
  card: { readonly width: number; readonly height: number } | null,
): readonly Annotation[] {
  const rows = (file: string) => tables.find((table) => table.file === file)?.rows ?? [];
  const urls = new Map(
    rows('sources.csv').map(({ cells }) => [cells['id'] ?? '', cells['url'] ?? '']),
  );
  const claims = rows('claims.csv').flatMap(({ row, cells }) => {
    const source = urls.get(cells['source'] ?? '');
    if (!source) return [];
    const about = cells['printing'] || cells['product'];
    const words = `${about}: ${cells['property']} ${cells['value']}`;
    const target = cells['quote'] ? { source, selector: quoted(cells['quote']) } : source;
    return [annotation(`claim-${row}`, 'identifying', words, target)];
  });
  const traits = rows('traits.csv').flatMap(({ row, cells }) => {
    const selector = card === null ? null : regionOf(cells['region'] ?? '', card);
    if (selector === null) return [];
    const words = `${cells['trait']}: ${cells['value']}`;
    const source = `#${encodeURIComponent(cells['of'] ?? '')}`;
    return [annotation(`trait-${row}`, 'describing', words, { source, selector })];
  });
  return [...claims, ...traits];
}

function annotation(
  name: string,
  motivation: Annotation['motivation'],
  value: string,
  target: Annotation['target'],
): Annotation {
  return {
    '@context': 'http://www.w3.org/ns/anno.jsonld',
    id: `#${name}`,
    type: 'Annotation',
    motivation,
    body: { type: 'TextualBody', value, format: 'text/plain' },
    target,
  };
}

function quoted(exact: string): object {
  return { type: 'TextQuoteSelector', exact };
}

/** `left top right bottom` in millimetres as a media fragment; null where it is none. */
function regionOf(
  region: string,
  { width, height }: { readonly width: number; readonly height: number },
): object | null {
  const [left, top, right, bottom] = region.trim().split(/\s+/).map(Number);
  if (![left, top, right, bottom].every(Number.isFinite)) return null;
  const share = (length: number, of: number) => Number(((100 * length) / of).toFixed(2));
  const box = [
    share(left!, width),
    share(top!, height),
    share(right! - left!, width),
    share(bottom! - top!, height),
  ];
  return {
    type: 'FragmentSelector',
    conformsTo: 'http://www.w3.org/TR/media-frags/',
    value: `xywh=percent:${box.join(',')}`,
  };
}
