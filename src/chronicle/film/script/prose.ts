import type { Account } from '../../account/types.ts';
import { type Story, type StoryNode, storyLink, storyTree } from '../../story/links.ts';
import { storyValue } from '../../story/values.ts';
import type { Phrases } from '../../words/types.ts';

/** A paragraph of the collector's own words, values filled in, and the names of their figures. */
export type Prose = readonly { readonly text: string; readonly figures: readonly string[] }[];

/** A story as it is read aloud: its paragraphs without mark-up and headings, values filled in. */
export function proseOf(story: string | null, account: Account, phrases: Phrases): Prose {
  return story === null ? [] : paragraphsIn(storyTree(story), account, phrases);
}

function paragraphsIn(node: Story | StoryNode, account: Account, phrases: Phrases): Prose {
  if (node.type === 'paragraph') return [paragraph(node, account, phrases)];
  if (node.type === 'heading' || !('children' in node)) return [];
  return node.children.flatMap((child) => paragraphsIn(child, account, phrases));
}

function paragraph(node: StoryNode, account: Account, phrases: Phrases): Prose[number] {
  const parts = wordsIn(node, account, phrases);
  return {
    text: parts.map(({ text }) => text).join(''),
    figures: parts.flatMap(({ figures }) => figures),
  };
}

function wordsIn(node: StoryNode, account: Account, phrases: Phrases): Prose {
  if (node.type === 'text' || node.type === 'inlineCode')
    return [{ text: node.value, figures: [] }];
  if (node.type === 'break') return [{ text: ' ', figures: [] }];
  if (node.type === 'link') {
    const to = storyLink(node.url);
    const value = to.is === 'value' ? storyValue(to.name, account, phrases) : undefined;
    if (value) return [{ text: value.text, figures: [value.figure.name] }];
  }
  return 'children' in node
    ? node.children.flatMap((child) => wordsIn(child, account, phrases))
    : [];
}
