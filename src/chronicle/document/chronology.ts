import type { Release } from '../account/types.ts';
import type { Block } from '../paper/types.ts';
import { ACROSS, type Axis, axisOf, laneOf } from '../site/lane.ts';
import { pShort, whenShort } from '../words/when.ts';
import { said } from './blocks.ts';
import type { Writer } from './types.ts';

/** Height of a lane in the units of its width. */
const HIGH = 66;

/** The chronology: a lane a printing, its ribbon as deep as its days are probable. */
export function chronologyBlock({ account, phrases, words, called }: Writer): Block {
  const axis = axisOf(account);
  return {
    is: 'lanes',
    heads: [words.chronology, phrases.properties['on-sale'] ?? '', words.heads.probability],
    parts: axis.years.map(String),
    lanes: account.printings.map(({ id, release }) => ({
      name: [{ text: called(id), to: `#printing-${id}` }],
      svg: laneDrawing(release, axis),
      when: said(whenShort(release, phrases)),
      doubt: said(pShort(release, phrases)),
    })),
  };
}

function laneDrawing(release: Release, axis: Axis): string {
  const { years, ribbon, agrees, slips } = laneOf(release, axis);
  const lines = years.map((at) => `M${at} 0V${HIGH}`).join('');
  const cells = ribbon.map(
    ([at, width, ink]) =>
      `<rect x="${at}" y="12" width="${width}" height="26" fill="#141617" fill-opacity="${ink}"/>`,
  );
  const ticks = agrees.map((at) => `M${at} 44v14`).join('');
  const crosses = slips.map((at) => `M${at - 6} 45l12 12m0 -12l-12 12`).join('');
  return `<svg xmlns="http://www.w3.org/2000/svg" width="${ACROSS}" height="${HIGH}" viewBox="0 0 ${ACROSS} ${HIGH}" fill="none"><path d="${lines}" stroke="#dfe1e0" stroke-width="2"/>${cells.join('')}<path d="${ticks}" stroke="#0086b3" stroke-width="3"/><path d="${crosses}" stroke="#c4006a" stroke-width="3"/></svg>`;
}
