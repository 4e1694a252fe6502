import type { Account } from '../account/types.ts';
import type { Block, Run, Words } from '../paper/types.ts';
import { type StoryNode, storyBeneath, storyLink } from '../story/links.ts';
import { storyValue } from '../story/values.ts';
import type { Writer } from './types.ts';

type Style = NonNullable<Run['style']>;

/** What the prose of a story is written with. */
interface Prose extends Pick<Writer, 'account' | 'phrases'> {
  readonly defined: ReadonlyMap<string, string>;
}

/**
 * A story on paper, without a first heading that repeats the title. Its links lead to sources and
 * printings of the paper, its figures are filled in, and HTML in it is shown as text.
 */
export function storyBlocks(
  text: string,
  title: string,
  { account, phrases }: Writer,
): readonly Block[] {
  const { children, defined } = storyBeneath(text, title);
  const prose = { account, phrases, defined };
  return children.flatMap((node) => blocksOf(node, prose));
}

function blocksOf(node: StoryNode, prose: Prose): readonly Block[] {
  const language = languageOf(prose.account);
  const words = (as: 'story' | 'quote' | 'head'): Block => ({
    is: 'words',
    as,
    words: runsOf(node, prose),
    ...language,
  });
  switch (node.type) {
    case 'heading':
      return [words('head')];
    case 'blockquote':
      return [words('quote')];
    case 'list':
      return [{ is: 'list', items: node.children.map((item) => runsOf(item, prose)), ...language }];
    case 'definition':
    case 'thematicBreak':
      return [];
    default:
      return [words('story')];
  }
}

/** The collector's own language, where it is told. */
function languageOf({ subject }: Account): { readonly language?: string } {
  return subject.language === '' ? {} : { language: subject.language };
}

const STYLES: Readonly<Record<string, Style>> = { emphasis: 'emphasis', strong: 'strong' };

/** The words of a part; paragraphs within it follow each other on new lines. */
function runsOf(node: StoryNode, prose: Prose, style?: Style): Words {
  const within = (inner?: Style): Words =>
    'children' in node
      ? node.children.flatMap((child, i): Words => {
          const between = i > 0 && child.type === 'paragraph' ? [{ text: '\n' }] : [];
          return [...between, ...runsOf(child, prose, inner)];
        })
      : [];
  const run = (text: string, as = style): Words => [{ text, ...(as ? { style: as } : {}) }];
  switch (node.type) {
    case 'text':
    case 'html':
      return run(node.value.replaceAll('\n', ' '));
    case 'inlineCode':
    case 'code':
      return run(node.value, 'code');
    case 'break':
      return run('\n');
    case 'image':
    case 'imageReference':
      return run(node.alt ?? '');
    case 'link':
      return linked(node.url, within(style), prose);
    case 'linkReference':
      return linked(prose.defined.get(node.identifier) ?? '', within(style), prose);
    default:
      return within(STYLES[node.type] ?? style);
  }
}

function linked(url: string, words: Words, { account, phrases }: Prose): Words {
  const link = storyLink(url);
  const leading = (to: string, some: Words = words): Words => some.map((run) => ({ ...run, to }));
  if (link.is === 'page') return /^(https?|mailto):/i.test(url) ? leading(url) : words;
  const unknown: Words = [...words, { text: url, style: 'code' }];
  if (link.is === 'source') {
    const known = account.sources.some(({ id }) => id === link.id);
    return known ? leading(`#source-${link.id}`) : unknown;
  }
  const value = storyValue(link.name, account, phrases);
  if (value === undefined) return unknown;
  const some: Words = words.length > 0 ? words : [{ text: value.text }];
  const { printing } = value.figure;
  return printing === null ? some : leading(`#printing-${printing}`, some);
}
