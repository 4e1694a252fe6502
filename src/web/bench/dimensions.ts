import type { BenchFace } from '../../contract/index.ts';
import type { Part, Place } from './part.ts';

/** A measured length with its two ends, drawn outside the card, and what stands at it. */
export interface Dimension {
  readonly way: 'across' | 'down';
  /** Where the line runs: its height for one across, its distance from the left for one down. */
  readonly line: number;
  readonly from: number;
  readonly to: number;
  /** Edge of the card that its dotted lines come from; equal to `line` where there are none. */
  readonly edge: number;
}

/** Words of a drawing, each line under the last. */
export interface Label {
  readonly at: Place;
  readonly anchor: 'start' | 'middle' | 'end';
  /** The first is what was measured, the next its doubt. */
  readonly lines: readonly string[];
}

/** All that is drawn round a card. */
export interface Dimensions {
  readonly lines: readonly Dimension[];
  readonly labels: readonly Label[];
}

/** The card's place in a drawing `width` wide, at most `most` high, and how high the drawing is. */
export function cardBox(
  width: number,
  most: number,
  [w, h]: Place,
): Part & { readonly all: number } {
  const { side, top, bottom } = width < NARROW ? SLIM : FULL;
  const scale = Math.max(1, Math.min((width - 2 * side) / w, (most - top - bottom) / h));
  const [across, down] = [w * scale, h * scale];
  return { x: (width - across) / 2, y: top, width: across, height: down, all: down + top + bottom };
}

/** A drawing less wide than this has its shares of centering in the sheet alone. */
export const NARROW = 560;
const FULL = { side: 164, top: 48, bottom: 64 };
const SLIM = { side: 64, top: 44, bottom: 60 };
const OUT = 34;

/** Dimension lines of the whole card: its size, its borders and the shares of centering. */
export function dimensionsOf({ size, frame }: BenchFace, box: Part, slim: boolean): Dimensions {
  if (!size) return { lines: [], labels: [] };
  const [right, bottom] = [box.x + box.width, box.y + box.height];
  const [w, h] = size.mm;
  const words = [0, 1].map((k) => sizeWords(size, k as 0 | 1));
  const borders = frame?.borders ? borderLines(frame.borders, box, [w, h]) : NONE;
  return {
    lines: [
      { way: 'across', line: box.y - 20, from: box.x, to: right, edge: box.y - 20 },
      { way: 'down', line: right + OUT, from: box.y, to: bottom, edge: right + OUT },
      ...borders.lines,
    ],
    labels: [
      {
        at: [box.x + box.width / 2, box.y - 28],
        anchor: 'middle',
        lines: [words[0]?.join(' ') ?? ''],
      },
      {
        at: [right + OUT + (slim ? 5 : 9), box.y + box.height / 2],
        anchor: 'start',
        lines: slim ? [h.toFixed(1)] : (words[1] ?? []),
      },
      ...borders.labels,
      ...(frame && !slim ? shares(frame, box) : []),
    ],
  };
}

const NONE: Dimensions = { lines: [], labels: [] };

function sizeWords({ mm, sd, from }: NonNullable<BenchFace['size']>, k: 0 | 1): string[] {
  if (sd) return [mm[k].toFixed(2), `± ${sd[k].toFixed(2)} mm`];
  return from === 'told' ? [`${mm[k]} mm`, 'as told'] : [`${mm[k].toFixed(2)} mm`];
}

type Borders = NonNullable<NonNullable<BenchFace['frame']>['borders']>;

function borderLines(borders: Borders, box: Part, [w, h]: Place): Dimensions {
  const [right, bottom] = [box.x + box.width, box.y + box.height];
  const across = (mm: number) => (mm / w) * box.width;
  const down = (mm: number) => (mm / h) * box.height;
  const under = { way: 'across', line: bottom + OUT, edge: bottom } as const;
  const beside = { way: 'down', line: box.x - OUT, edge: box.x } as const;
  const said = (mm: number) => `${mm.toFixed(2)} mm`;
  return {
    lines: [
      { ...beside, from: box.y, to: box.y + down(borders.top) },
      { ...beside, from: bottom - down(borders.bottom), to: bottom },
      { ...under, from: box.x, to: box.x + across(borders.left) },
      { ...under, from: right - across(borders.right), to: right },
    ],
    labels: [
      label(box.x - OUT - 8, box.y + down(borders.top) / 2 + 4, 'end', said(borders.top)),
      label(box.x - OUT - 8, bottom - down(borders.bottom) / 2 + 4, 'end', said(borders.bottom)),
      label(box.x - 8, bottom + OUT + 4, 'end', said(borders.left)),
      label(right + 8, bottom + OUT + 4, 'start', said(borders.right)),
    ],
  };
}

function label(x: number, y: number, anchor: Label['anchor'], words: string): Label {
  return { at: [x, y], anchor, lines: [words] };
}

function shares(frame: NonNullable<BenchFace['frame']>, box: Part): readonly Label[] {
  const { leftRight, topBottom, sd } = frame;
  return [
    {
      at: [box.x - OUT - 8, box.y + box.height / 2],
      anchor: 'end',
      lines: [sayShares(topBottom), `± ${sd[1].toFixed(1)} top to bottom`],
    },
    {
      at: [box.x + box.width / 2, box.y + box.height + OUT + 4],
      anchor: 'middle',
      lines: [sayShares(leftRight), `± ${sd[0].toFixed(1)} left to right`],
    },
  ];
}

/** Shares of centering as they are printed, `46.7 : 53.3`. */
export function sayShares([first, second]: Place): string {
  return `${first.toFixed(1)} : ${second.toFixed(1)}`;
}

/** What of the card is shown, where it is not all of it. */
export function partDimensions(part: Part, box: Part): Dimensions {
  const [right, bottom] = [box.x + box.width, box.y + box.height];
  return {
    lines: [
      { way: 'across', line: box.y - 20, from: box.x, to: right, edge: box.y - 20 },
      { way: 'down', line: right + OUT, from: box.y, to: bottom, edge: right + OUT },
    ],
    labels: [
      label(box.x + box.width / 2, box.y - 28, 'middle', `${part.width.toFixed(1)} mm shown`),
      label(right + OUT + 9, box.y + box.height / 2, 'start', part.height.toFixed(1)),
    ],
  };
}

/** The line of a dimension with a stop at each end, and the dotted lines that lead to the card. */
export function strokesOf({ way, line, from, to, edge }: Dimension): readonly [string, string] {
  const at = (along: number, aside: number) =>
    way === 'across'
      ? `${along.toFixed(1)} ${aside.toFixed(1)}`
      : `${aside.toFixed(1)} ${along.toFixed(1)}`;
  const stop = (along: number) => `M${at(along, line - 4)}L${at(along, line + 4)}`;
  const lead = (along: number) =>
    `M${at(along, edge)}L${at(along, line + Math.sign(line - edge) * 8)}`;
  return [
    `M${at(from, line)}L${at(to, line)}${stop(from)}${stop(to)}`,
    edge === line ? '' : lead(from) + lead(to),
  ];
}
