/** A link or picture in a document. */
export interface MarkdownLink {
  readonly target: string;
  readonly line: number;
}

/** A fenced block of a document. */
export interface Fence {
  readonly language: string;
  readonly lines: readonly string[];
}

/** Links and pictures of a document, those in fenced blocks and in code left out. */
export function linksIn(text: string): readonly MarkdownLink[] {
  return prose(text).flatMap((words, at) =>
    [
      ...words.matchAll(/\[[^\]]*\]\(([^)\s]+)\)/g),
      ...words.matchAll(/\b(?:src|srcset|href)="([^"]+)"/g),
    ].map((match) => ({ target: match[1] ?? '', line: at + 1 })),
  );
}

/** The anchors of a document's headings, as code hosts make them. */
export function anchorsIn(text: string): readonly string[] {
  const seen = new Map<string, number>();
  return prose(text, false).flatMap((line) => {
    const heading = /^#{1,6}\s+(.*)$/.exec(line)?.[1];
    if (heading === undefined) return [];
    const plain = heading.replace(/\[([^\]]*)\]\([^)]*\)/g, '$1').toLowerCase();
    const anchor = plain
      .replace(/[^\p{L}\p{N}\s_-]/gu, '')
      .trim()
      .replace(/\s/g, '-');
    const times = seen.get(anchor) ?? 0;
    seen.set(anchor, times + 1);
    return [times === 0 ? anchor : `${anchor}-${times}`];
  });
}

/** The fenced blocks of a document. */
export function fencesIn(text: string): readonly Fence[] {
  return [...text.matchAll(/^```(\w*)\n([\s\S]*?)^```$/gm)].map((match) => ({
    language: match[1] ?? '',
    lines: (match[2] ?? '').split('\n').filter((line) => line !== ''),
  }));
}

/** The lines of a document, with those of fenced blocks emptied, and code spans too if wanted. */
function prose(text: string, withoutCode = true): readonly string[] {
  let fenced = false;
  return text.split(/\r?\n/).map((line) => {
    const fence = /^\s*```/.test(line);
    if (fence) fenced = !fenced;
    if (fence || fenced) return '';
    return withoutCode ? line.replace(/`[^`]*`/g, '') : line;
  });
}
