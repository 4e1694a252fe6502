import { linksIn, storyLink, storyTree } from './links.ts';

/** A link of a story that leads nowhere. */
export interface StoryFault {
  readonly file: string;
  /** Both from 1. */
  readonly line: number;
  readonly column: number;
  readonly found: string;
  readonly expected: string;
}

/** What the links of a story may name. */
export interface StoryKnown {
  readonly source: (id: string) => boolean;
  readonly value: (name: string) => boolean;
}

/** The links of a story that name a source or a figure that is not known. */
export function storyFaults(file: string, text: string, known: StoryKnown): StoryFault[] {
  return linksIn(storyTree(text)).flatMap((link): StoryFault[] => {
    const expected = expectedOf(storyLink(link.url), known);
    const start = link.position?.start;
    if (expected === null || start === undefined) return [];
    return [{ file, line: start.line, column: start.column, found: link.url, expected }];
  });
}

function expectedOf(to: ReturnType<typeof storyLink>, known: StoryKnown): string | null {
  if (to.is === 'source')
    return known.source(to.id) ? null : 'source: with the id of a source that may be published';
  if (to.is === 'value')
    return known.value(to.name) ? null : 'value: with the name of a figure of the account';
  return null;
}
