import type { Account } from '../account/types.ts';
import { type StoryNode, storyBeneath, storyLink } from '../story/links.ts';
import { Html, html, type Part } from './html.ts';

/** The language that the collector writes in, as an attribute; nothing where it is not told. */
export function inItsLanguage({ subject }: Pick<Account, 'subject'>): Html | null {
  return subject.language === '' ? null : html` lang="${subject.language}"`;
}

/** Where the links of a story lead, and what they are filled in with. */
export interface StoryPlaces {
  /** The address of a source; undefined for one that is not known. */
  readonly source: (id: string) => string | undefined;
  /** A figure in words and its address; undefined for one that is not known. */
  readonly value: (name: string) => { readonly text: string; readonly href: string } | undefined;
}

/**
 * A story as HTML. Its headings go one level down, since the page has its own, and a first one that
 * repeats the title of the page is left out. HTML in it is shown as text.
 */
export function storyHtml(text: string, places: StoryPlaces, title = ''): Html {
  const { children, defined } = storyBeneath(text, title);
  return html`${children.map((node) => nodeHtml(node, places, defined))}`;
}

function nodeHtml(
  node: StoryNode,
  places: StoryPlaces,
  defined: ReadonlyMap<string, string>,
): Part {
  const inside =
    'children' in node ? node.children.map((child) => nodeHtml(child, places, defined)) : [];
  switch (node.type) {
    case 'text':
    case 'html':
      return node.value;
    case 'link':
      return linked(node.url, inside, places);
    case 'linkReference':
      return linked(defined.get(node.identifier) ?? '', inside, places);
    case 'image':
    case 'imageReference':
      return node.alt ?? '';
    case 'heading':
      return wrapped(`h${Math.min(6, node.depth + 1)}`, inside);
    case 'list':
      return node.ordered
        ? html`<ol start="${node.start ?? 1}">${inside}</ol>`
        : wrapped('ul', inside);
    case 'inlineCode':
      return html`<code>${node.value}</code>`;
    case 'code':
      return html`<pre><code>${node.value}</code></pre>`;
    case 'thematicBreak':
      return html`<hr>`;
    case 'break':
      return html`<br>`;
    default: {
      const tag = TAGS[node.type];
      return tag === undefined ? null : wrapped(tag, inside);
    }
  }
}

const TAGS: Readonly<Record<string, string>> = {
  paragraph: 'p',
  emphasis: 'em',
  strong: 'strong',
  blockquote: 'blockquote',
  listItem: 'li',
};

function wrapped(tag: string, inside: Part): Html {
  return html`${new Html(`<${tag}>`)}${inside}${new Html(`</${tag}>`)}`;
}

function linked(url: string, words: readonly Part[], places: StoryPlaces): Part {
  const to = storyLink(url);
  if (to.is === 'page')
    return /^(https?|mailto):/i.test(url) ? html`<a href="${url}">${words}</a>` : words;
  if (to.is === 'source') {
    const href = places.source(to.id);
    return href === undefined
      ? html`${words} <code>${url}</code>`
      : html`<a href="${href}">${words}</a>`;
  }
  const value = places.value(to.name);
  if (value === undefined) return html`${words}<code>${url}</code>`;
  return html`<a class="value" href="${value.href}">${words.length > 0 ? words : value.text}</a>`;
}
