import { describe, expect, it } from 'vitest';
import type { Block, Paper } from '../paper/types.ts';
import { volumesOf } from './volumes.ts';

/** A paper of sections, each of which links to the one before and to the sources at the end. */
function paperOf(sections: number): Paper {
  const parts = Array.from({ length: sections }, (_, k): readonly Block[] => [
    { is: 'heading', level: 2, text: `Printing ${k}`, key: `printing-${k}` },
    {
      is: 'table',
      columns: [{ head: 'Source', share: 1 }],
      rows: [[[{ text: 'before', to: `#printing-${Math.max(0, k - 1)}` }]], [[SOURCE]]],
    },
  ]);
  return {
    ...{ title: 'Tidebell Hare', subtitle: '', language: 'en', size: 'a4', asOf: null },
    ...{ contents: 'Contents', foot: 'Tidebell Hare' },
    blocks: [
      { is: 'heading', level: 1, text: 'Chronology' },
      { is: 'heading', level: 1, text: 'Printings' },
      ...parts.flat(),
      { is: 'heading', level: 1, text: 'Sources' },
      { is: 'words', words: [{ text: 'Ledger', key: 'source-ledger' }] },
    ],
  };
}
const SOURCE = { text: 'Ledger', to: '#source-ledger' };

const headingsOf = ({ blocks }: Paper, of: 1 | 2) =>
  blocks.flatMap((block) => (block.is === 'heading' && block.level === of ? [block.text] : []));

describe('a long paper', () => {
  it('is cut into volumes that hold every section once, in order, under its heading', () => {
    const whole = paperOf(130);
    const volumes = volumesOf(whole);
    expect(volumes.map(({ title }) => title)).toEqual(
      [1, 2, 3].map((k) => `Tidebell Hare · ${k} / 3`),
    );
    expect(volumes.flatMap((one) => headingsOf(one, 2))).toEqual(headingsOf(whole, 2));
    expect(volumes.map((one) => headingsOf(one, 1))).toEqual([
      ['Chronology', 'Printings'],
      ['Printings'],
      ['Printings', 'Sources'],
    ]);
  });

  it('links to what the same volume holds, and to nothing else', () => {
    for (const { blocks } of volumesOf(paperOf(130))) {
      const text = JSON.stringify(blocks);
      const keys = [...text.matchAll(/"key":"([^"]*)"/g)].map(([, key]) => key);
      const links = [...text.matchAll(/"to":"#([^"]*)"/g)].map(([, to]) => to);
      expect(links.length).toBeGreaterThan(25);
      expect(links.filter((to) => !keys.includes(to))).toEqual([]);
    }
  });

  it('stays whole where it is not long', () => {
    const paper = paperOf(60);
    expect(volumesOf(paper)).toEqual([paper]);
  });
});
