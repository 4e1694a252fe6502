import type { Figure } from '../figures/types.ts';
import { storyValue } from '../story/values.ts';
import { between, hrefOf, printingPage } from './addresses.ts';
import type { StoryPlaces } from './story-html.ts';
import type { Teller } from './types.ts';

/** Where the links of a story on a page lead. */
export function placesFor(path: string, { account, phrases }: Teller): StoryPlaces {
  const sources = new Set(account.sources.map(({ id }) => id));
  return {
    source: (id) =>
      sources.has(id) ? hrefOf(between(path, 'sources.html'), `source.${id}`) : undefined,
    value: (name) => {
      const value = storyValue(name, account, phrases);
      return value && { text: value.text, href: figureHref(value.figure, path) };
    },
  };
}

/** The lasting address of a figure, as seen from a page. */
export function figureHref({ name, printing, value }: Figure, path: string): string {
  if (name.startsWith('accuracy.')) return hrefOf(between(path, 'sources.html'), name);
  if (printing !== null && !name.startsWith('place.'))
    return hrefOf(between(path, printingPage(printing)), name);
  if (value.is === 'printing') return hrefOf(between(path, 'index.html'), `place.${value.id}`);
  if (printing !== null) return hrefOf(between(path, 'index.html'), name);
  return name === 'printings'
    ? hrefOf(between(path, 'index.html'), 'chronology')
    : hrefOf(between(path, 'sources.html'), 'text');
}
