import type { Block, Paper } from '../paper/types.ts';

/** Sections of a volume, and how many a paper may have before it is cut. A typesetter's memory grows with the pages. */
const SECTIONS = 50;
const WHOLE = 60;

/**
 * A paper in volumes where it is long: each begins with a section of the second level, says which of
 * how many it is, and links to nothing that stands in another one.
 */
export function volumesOf(paper: Paper): readonly Paper[] {
  if (paper.blocks.filter(isSection).length <= WHOLE) return [paper];
  const volumes = cut(paper.blocks);
  return volumes.map((blocks, k) => {
    const of = `${k + 1} / ${volumes.length}`;
    const [title, foot] = [`${paper.title} · ${of}`, `${paper.foot} · ${of}`];
    return { ...paper, title, foot, blocks: linkedWithin(blocks) };
  });
}

function isSection(block: Block): boolean {
  return block.is === 'heading' && block.level === 2;
}

/** Each part after the first repeats the heading that its first section stands under. */
function cut(blocks: readonly Block[]): readonly (readonly Block[])[] {
  const parts: Block[][] = [[]];
  let above: Block | undefined;
  let sections = 0;
  for (const block of blocks) {
    if (block.is === 'heading' && block.level === 1) above = block;
    if (isSection(block)) {
      if (sections > 0 && sections % SECTIONS === 0) parts.push(above ? [above] : []);
      sections++;
    }
    parts.at(-1)?.push(block);
  }
  return parts;
}

/** The blocks without links to what is not among them; papers are plain data, and are walked as such. */
function linkedWithin(blocks: readonly Block[]): readonly Block[] {
  const keys = new Set<unknown>();
  const text = JSON.stringify(blocks, (name, value) => {
    if (name === 'key') keys.add(value);
    return value;
  });
  return JSON.parse(text, (name, value) =>
    name === 'to' && value.startsWith('#') && !keys.has(value.slice(1)) ? undefined : value,
  );
}
