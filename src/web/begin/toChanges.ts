import type { Cells, WireChange } from '../../contract/index.ts';
import { idOf } from '../words/index.ts';
import { type Draft, sourcesIn } from './draft.ts';

const OWN = 'My notes';

/** Ids for the printings of a draft, made of the words that tell them apart. */
export function printingIds(printings: readonly Cells[]): readonly string[] {
  const taken = new Set<string>();
  return printings.map((cells) => {
    const { language, product, number, finish, edition, wave } = cells;
    const words = [language, product, number, finish, edition, wave ? `wave ${wave}` : ''];
    const id = idOf(words.filter((word) => word !== 'none').join(' ') || 'printing', taken);
    taken.add(id);
    return id;
  });
}

/** What a collector's word for a source tells of its kind; `other` where it tells nothing. */
export function kindOf(words: string): string {
  const kinds: readonly (readonly [RegExp, string])[] = [
    [/publisher|pub\.|official|maker/i, 'publisher-database'],
    [/check ?list|index|guide list/i, 'checklist'],
    [/magazine|monthly|weekly|cover/i, 'magazine'],
    [/shop|store|retail/i, 'store-listing'],
    [/label|slab|grad/i, 'grading-label'],
    [/forum|board|thread|newsgroup/i, 'forum'],
    [/press|letter to the trade/i, 'press-release'],
    [/paper|gazette|news/i, 'newspaper'],
    [/advert|\bads?\b/i, 'advertisement'],
    [/box|wrapper|packag/i, 'packaging'],
    [/video|film/i, 'video'],
    [/book|guide/i, 'book'],
    [/own|mine|\bmy\b|\bI\b|seen/i, 'own-observation'],
  ];
  return kinds.find(([pattern]) => pattern.test(words))?.[1] ?? 'other';
}

function sourceIds(words: readonly string[]): ReadonlyMap<string, string> {
  const ids = new Map<string, string>();
  for (const one of words) ids.set(one, idOf(one, new Set(ids.values())));
  return ids;
}

/** The rows of a new dossier, as changes that add them; only printings that something names. */
export function toChanges(draft: Draft): readonly WireChange[] {
  const ids = printingIds(draft.printings);
  const kept = draft.lines.filter(({ printing }) => printing >= 0);
  const claims = kept.flatMap((line) =>
    line.claims.filter(({ keep }) => keep).map((claim) => ({ claim, line })),
  );
  const anonymous = claims.some(({ claim }) => claim.source.trim() === '');
  const sources = sourceIds([...sourcesIn(draft), ...(anonymous ? [OWN] : [])]);
  const named = new Set(kept.map(({ printing }) => printing));
  return [
    ...draft.printings.flatMap((cells, at) =>
      named.has(at) ? [add('printings.csv', { id: ids[at] ?? '', ...cells })] : [],
    ),
    ...[...sources].map(([title, id]) => add('sources.csv', { id, title, kind: kindOf(title) })),
    ...claims.map(({ claim, line }) =>
      add('claims.csv', {
        printing: ids[line.printing] ?? '',
        source: sources.get(claim.source.trim() || OWN) ?? '',
        property: claim.property,
        value: claim.value.trim(),
        locator: `notes, line ${line.line}`,
        quote: line.text.trim(),
      }),
    ),
  ];
}

function add(file: string, after: Cells): WireChange {
  return { file, op: 'add', after };
}
