import { fromMarkdown } from 'mdast-util-from-markdown';

/** A story as a tree of CommonMark; HTML in it is a node that is shown as text. */
export type Story = ReturnType<typeof fromMarkdown>;
/** A part of a story. */
export type StoryNode = Story['children'][number];

/** What a link of a story means: a source that it cites, a figure that it is filled in with. */
export type StoryLink =
  | { readonly is: 'source'; readonly id: string }
  | { readonly is: 'value'; readonly name: string }
  | { readonly is: 'page'; readonly url: string };

/** Reads a story. */
export function storyTree(text: string): Story {
  return fromMarkdown(text);
}

/**
 * The parts of a story that stands beneath a title, without a first heading that repeats it, and
 * the addresses that it defines.
 */
export function storyBeneath(
  text: string,
  title: string,
): { readonly children: readonly StoryNode[]; readonly defined: ReadonlyMap<string, string> } {
  const [head, ...rest] = storyTree(text).children;
  const children = head === undefined || isHeading(head, title) ? rest : [head, ...rest];
  const defined = new Map(
    children.flatMap((node) => (node.type === 'definition' ? [[node.identifier, node.url]] : [])),
  );
  return { children, defined };
}

function isHeading(node: StoryNode, title: string): boolean {
  if (node.type !== 'heading') return false;
  return node.children.map((child) => ('value' in child ? child.value : '')).join('') === title;
}

/** What a link means by its address. */
export function storyLink(url: string): StoryLink {
  const named = (scheme: string) => decoded(url.slice(scheme.length));
  if (url.startsWith('source:')) return { is: 'source', id: named('source:') };
  if (url.startsWith('value:')) return { is: 'value', name: named('value:') };
  return { is: 'page', url };
}

/** All links of a story and the addresses that it defines, in order. */
export function linksIn(node: Story | StoryNode): readonly Extract<StoryNode, { url: string }>[] {
  const below = 'children' in node ? node.children.flatMap((child) => linksIn(child)) : [];
  return node.type === 'link' || node.type === 'definition' ? [node, ...below] : below;
}

function decoded(text: string): string {
  try {
    return decodeURIComponent(text);
  } catch {
    return text;
  }
}
