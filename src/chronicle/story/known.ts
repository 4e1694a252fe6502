import type { StoryKnown } from './faults.ts';

/** Ids that a story may name, known before anything is computed. */
export interface StoryIds {
  readonly printings: ReadonlySet<string>;
  readonly services: ReadonlySet<string>;
  readonly sources: ReadonlySet<string>;
}

/** Figures of the whole account. */
const WHOLE = new Set(['printings', 'sources', 'claims', 'first']);

/** What a story may name, judged by ids alone: whether a figure has a value is seen once it is computed. */
export function knownByIds({ printings, services, sources }: StoryIds): StoryKnown {
  return {
    source: (id) => sources.has(id),
    value: (name) => {
      const plain = name.replace(/\.(doubt|how)$/, '');
      if (WHOLE.has(plain)) return true;
      const [kind = '', id = '', service, ...grade] = plain.split('.');
      if (kind === 'accuracy') return sources.has(id) && service === undefined;
      if (!printings.has(id)) return false;
      if (['release', 'place', 'extant'].includes(kind)) return service === undefined;
      if (['population', 'top'].includes(kind))
        return services.has(service ?? '') && grade.length === 0;
      if (kind !== 'price') return false;
      return service === undefined || (services.has(service) && grade.length > 0);
    },
  };
}
