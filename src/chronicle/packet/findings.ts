import { type Compared, type Described, type Mark, UNITS } from '../../bench/index.ts';
import type { Block, Words } from '../paper/types.ts';
import { plain, small } from './blocks.ts';
import type { PacketFace, PacketOptions } from './types.ts';

/** Marks that are told: those that a hand confirmed, and measured ones more likely there than not. */
export function toldMarks({ marks }: PacketFace): readonly Mark[] {
  return marks
    .filter(({ state, defect }) => state === 'confirmed' || (state === 'open' && defect.p >= 0.5))
    .sort((a, b) => weightOf(b) - weightOf(a));
}

function weightOf({ state, defect }: Mark): number {
  return state === 'confirmed' ? 1 : defect.p;
}

/** The drawing of a face with its numbered marks, and the marks beside it. */
export function faceBlocks(face: PacketFace, { most }: PacketOptions): readonly Block[] {
  const marks = toldMarks(face);
  const heading: Block = { is: 'heading', level: 2, text: `The ${face.side}` };
  const nothing =
    marks.length === 0
      ? [plain('No mark was found that these pictures could show. That is no clean bill.')]
      : [];
  const left = marks.length - most;
  return [
    heading,
    ...(face.whyNot ? [plain(face.whyNot)] : []),
    ...(face.drawing ? [drawingOf(face, face.drawing)] : []),
    ...(marks.length > 0 ? [tableOf(marks.slice(0, most))] : nothing),
    ...(left > 0 ? [small(`${left} more, less likely there, are not listed.`)] : []),
  ];
}

/** Widths of a drawing in millimetres: one with marks is to be read closely. */
const WIDTHS = { marked: 84, clear: 60 };

function drawingOf(face: PacketFace, svg: string): Block {
  const { side } = face;
  return {
    is: 'drawing',
    svg,
    width: toldMarks(face).length > 0 ? WIDTHS.marked : WIDTHS.clear,
    alternative: `The ${side} drawn to scale with its borders and marks`,
    caption: [
      { text: 'Cyan: measured, in mm, with the half width of a 95 % interval. Magenta: marks.' },
    ],
  };
}

function tableOf(marks: readonly Mark[]): Block {
  return {
    is: 'table',
    columns: [
      { head: 'Mark', share: null, align: 'right' },
      { head: 'Kind', share: 2 },
      { head: 'mm from left, top', share: 2 },
      { head: 'mm long', share: 1, align: 'right' },
      { head: 'mm²', share: 1, align: 'right' },
      { head: 'How sure', share: 3 },
    ],
    rows: marks.map(({ defect, from, state, words }, i) => {
      const {
        kind,
        centreMm: [x, y],
        lengthMm,
        areaMm2,
        p,
      } = defect;
      const sure = from === 'hand' ? 'set by hand' : `measured, p ${p.toFixed(2)}`;
      return [
        String(i + 1),
        kind.replaceAll('-', ' '),
        `${x.toFixed(1)}, ${y.toFixed(1)}`,
        lengthMm === null ? '' : lengthMm.toFixed(1),
        areaMm2.toFixed(2),
        [sure, state === 'confirmed' && from === 'machine' ? 'confirmed by hand' : '', ...words]
          .filter(Boolean)
          .join('; '),
      ].map((text): Words => [{ text }]);
    }),
  };
}

/** Neutral words for what a comparison says. */
const SAYS: Readonly<Record<Compared['says'], string>> = {
  agrees: 'within the words',
  disagrees: 'more than the words allow',
  open: 'open',
};

/** The seller's words beside what was measured. */
export function describedBlocks(listing: string, described: Described | null): readonly Block[] {
  if (listing === '') return [];
  const quote: Block = {
    is: 'words',
    as: 'quote',
    words: [{ text: listing.replace(/\s*\n\s*/g, ' ') }],
  };
  const heading: Block = {
    is: 'heading',
    level: 2,
    text: 'The seller’s words beside what was measured',
  };
  if (described === null) return [heading, quote];
  const unseen = described.unseen.map(({ side, measure }) => `${measure} (${side})`).join(', ');
  return [
    heading,
    quote,
    ...(described.silent
      ? [plain('No condition word was found in them: nothing is compared.')]
      : []),
    ...(described.compared.length > 0 ? [comparedTable(described.compared)] : []),
    ...(unseen ? [small(`Spoken of, but not to be seen in these pictures: ${unseen}.`)] : []),
  ];
}

function comparedTable(compared: readonly Compared[]): Block {
  return {
    is: 'table',
    columns: [
      { head: 'Words', share: 2 },
      { head: 'Of', share: 2 },
      { head: 'They allow', share: 2 },
      { head: 'Measured', share: 1, align: 'right' },
      { head: 'More than that, p', share: 2, align: 'right' },
      { head: 'So', share: 2 },
    ],
    rows: compared.map(({ words, side, measure, atMost, found, pMore, says }) =>
      [
        `“${words}”`,
        `${side}, ${measure.replaceAll('-', ' ')}`,
        `up to ${atMost} ${UNITS[measure].split(',')[0]}`,
        found.mean.toFixed(1),
        pMore.toFixed(2),
        SAYS[says],
      ].map((text): Words => [{ text }]),
    ),
  };
}
