import {
  type FaceAnswer,
  type Frame,
  isHint,
  type Mark,
  type MeasuredSize,
  type SetByHand,
  type Sign,
} from '../../bench/index.ts';
import { sayDoubt } from '../../evidence/index.ts';
import type { Measured } from '../examine/measure.ts';
import { colourReport } from './colour.ts';
import { describedReport } from './described.ts';
import { marksReport } from './marks.ts';
import { sizeNumbers, withDoubt } from './numbers.ts';
import { reliefReport } from './relief.ts';
import { screenReport } from './screen.ts';
import { tableOf } from './table.ts';
import { wrapped } from './width.ts';
import { percent } from './words.ts';

/** What was measured on a copy, face by face, for reading; marks that are less likely than not are left out. */
export function examinationReport(
  { examination, relief, printing: { process, colours }, described, marks, byHand }: Measured,
  width: number,
): string {
  const { front, back, signs } = examination;
  const faces = [`Front\n\n${faceReport(front, byHand.front, marks.front, width)}`];
  if (back) faces.push(`Back\n\n${faceReport(back, byHand.back, marks.back, width)}`);
  if (relief)
    faces.push(`Under the moved lamp\n\n${reliefReport(relief.defects, relief.limits, [], width)}`);
  if (process) faces.push(`How it was printed\n\n${screenReport(process, width)}`);
  if (colours) faces.push(`Colours by the chart\n\n${colourReport(colours, width)}`);
  if (described) faces.push(`As the seller wrote\n\n${describedReport(described, width)}`);
  const signed = signs.map((sign) => `${signWords(sign, width)}\n`);
  return `${faces.join('\n')}\n${signed.join('')}${gradeReport(examination, width)}`;
}

function faceReport(
  face: FaceAnswer,
  byHand: SetByHand,
  marks: readonly Mark[],
  width: number,
): string {
  const { outline, frame, size, whyNot, defects, looks } = face;
  const sure = outline && (byHand.corners ? 'set by hand' : `sure to ${percent(outline.p)}`);
  const rows = [
    ...(sure ? [['outline', sure]] : []),
    ...(size ? [['size', sizeWords(size)]] : []),
    ...(frame && byHand.frame ? [['printed frame', 'set by hand']] : []),
    ...(frame ? frameRows(frame) : []),
  ];
  const table =
    rows.length > 0 ? tableOf([{ head: 'what' }, { head: 'measured' }], rows, width) : '';
  const parts = [table, whyNot ? paragraph(whyNot, width) : ''];
  if (looks.length > 0 && size)
    parts.push(marksReport(defects, width), hintWords(defects, width), limitWords(face, width));
  parts.push(handWords(marks, width));
  if (outline && !size && !whyNot)
    parts.push(
      paragraph('No size: give --card, or --dpi for a scan that does not state it.', width),
    );
  return parts.filter((part) => part !== '').join('\n');
}

function sizeWords(size: MeasuredSize): string {
  const [width, height] = sizeNumbers(size);
  const whose = size.from === 'told' ? 'as told' : 'by the scan’s dots an inch';
  return `${width} × ${height} mm, ${whose}`;
}

function frameRows({ bordersMm, bordersSdMm, centering, ...print }: Frame): readonly string[][] {
  const { leftRight, topBottom, sd } = centering;
  const shares = ([a, b]: readonly [number, number], doubt: number) =>
    `${a.toFixed(1)} / ${b.toFixed(1)} (± ${sayDoubt(doubt, 1)})`;
  const borders =
    bordersMm && bordersSdMm
      ? (['left', 'right', 'top', 'bottom'] as const).map((side) => [
          `border ${side}`,
          `${withDoubt(bordersMm[side], bordersSdMm[side])} mm`,
        ])
      : [];
  return [
    ...borders,
    ['centering left / right', shares(leftRight, sd[0])],
    ['centering top / bottom', shares(topBottom, sd[1])],
    ['print turned', `${withDoubt(print.rotationDeg, print.rotationSdDeg)}° clockwise`],
  ];
}

/** What hands said of marks, and the marks that they added. */
function handWords(marks: readonly Mark[], width: number): string {
  const said = marks
    .filter(({ state }) => state !== 'open')
    .map(({ from, state, defect, words }) => {
      const [x, y] = defect.centreMm;
      const what = `${defect.kind.replaceAll('-', ' ')} at ${x.toFixed(1)}, ${y.toFixed(1)} mm`;
      return [`${what} ${from === 'hand' ? 'added' : state}`, ...words].join(', ');
    });
  return said.length === 0 ? '' : paragraph(`By hand: ${said.join('; ')}.`, width);
}

/** What the hints of relief among the likely marks rest on, each sentence once. */
function hintWords(defects: FaceAnswer['defects'], width: number): string {
  const hints = defects.filter((mark) => mark.p >= 0.5).filter(isHint);
  const words = new Set(hints.map(({ kind, words }) => `${kind}: ${words}`));
  return [...words].map((each) => paragraph(`Hint of a ${each}`, width)).join('');
}

function limitWords({ defects, limits }: FaceAnswer, width: number): string {
  if (limits.length === 0) return '';
  const nothing = defects.some(({ p }) => p >= 0.5)
    ? 'Nothing else was found'
    : 'Nothing was found';
  const each = limits.map(
    ({ kinds, where, mm }) =>
      `${kinds.join(' and ').replaceAll('-', ' ')} ${where} down to ${mm.toFixed(1)} mm`,
  );
  return paragraph(`${nothing} that these pictures could show: ${each.join(', ')}.`, width);
}

/** A sign of alteration in its two explanations, with what limits it. */
function signWords({ of, words, cautions }: Sign, width: number): string {
  const name = of === 'swapped-back' ? 'Front and back' : of === 'trimmed' ? 'Size' : 'Edges';
  return paragraph(`${name}: ${words} ${cautions.join(' ')}`, width);
}

function gradeReport({ front, back, grade }: Measured['examination'], width: number): string {
  const { scale, p, looks } = grade;
  const likely = scale.grades
    .map((name, g) => [name, p[g] ?? 0] as const)
    .filter(([, share]) => share >= 0.05)
    .reverse()
    .map(([name, share]) => `${name}: ${percent(share)}`);
  const nothing = ![front, back].some((face) => face?.frame || face?.looks.length);
  const said = nothing
    ? 'not guessed, since nothing of this copy could be measured.'
    : `${likely.join(', ')}. A guess from limits of common practice and from what was measured; no service is bound by it.`;
  const [next] = looks;
  const look = next
    ? ` One more look that would change it most: ${LOOKS[next.look]} (${next.gainBits.toFixed(2)} bits).`
    : '';
  return paragraph(`Grade on the scale “${scale.service}”: ${said}${look}`, width);
}

const LOOKS = {
  photo: 'a picture of the face that none shows yet',
  scan: 'a scan',
  raking: 'a picture under a low lamp',
  lamps: 'four pictures or more under a moved lamp',
} as const;

function paragraph(text: string, width: number): string {
  return wrapped(text, width)
    .map((line) => `${line}\n`)
    .join('');
}
