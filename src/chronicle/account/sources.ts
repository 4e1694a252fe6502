import type { Dating } from '../../dating/index.ts';
import type { Claim, Source } from '../../evidence/index.ts';
import type { ToldSource } from './types.ts';

/** The sources that may be published, with what they have proved to be worth. */
export function toldSources(
  sources: readonly Source[],
  claims: readonly Claim[],
  dating: Dating,
): ToldSource[] {
  const dated = new Map(dating.sources.map((one) => [one.id, one]));
  const counts = new Map<string, number>();
  for (const { source } of claims) counts.set(source, (counts.get(source) ?? 0) + 1);
  const shown = new Set(sources.map(({ id }) => id));
  return sources.map((source) => {
    const worth = dated.get(source.id);
    return {
      id: source.id,
      title: source.title ?? source.id,
      kind: source.kind,
      citation: source.citation ?? null,
      url: source.url ?? null,
      accessed: source.accessed ?? null,
      archived: source.archived ?? null,
      cites: source.cites.filter((id) => shown.has(id)),
      claims: counts.get(source.id) ?? 0,
      accuracy: worth?.accuracy ?? null,
      accuracy95: worth?.accuracy95 ?? null,
      derives: (worth?.derives ?? []).filter(({ from }) => shown.has(from)),
      habits: (worth?.habits ?? []).map(({ reading, words, share }) => ({ reading, words, share })),
    };
  });
}
