import type { BenchFace } from '../../contract/index.ts';
import { sayDoubt } from '../../evidence/index.ts';
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
  /** Where the number comes from, in plain words. */
  readonly why?: string;
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
/** How far outside the card the lines stand; where there is little room, nearer. */
const outOf = (slim: boolean) => (slim ? 20 : 34);

/** Dimension lines of the whole card: its size, its borders and the shares of centering. */
export function dimensionsOf({ size, frame }: BenchFace, box: Part, slim: boolean): Dimensions {
  if (!size) return { lines: [], labels: [] };
  const [right, bottom] = [box.x + box.width, box.y + box.height];
  const [across, down] = [sizeWords(size, 0), sizeWords(size, 1)];
  const why = whySize(size);
  const out = outOf(slim);
  const borders = frame?.borders ? borderLines(frame.borders, box, size.mm, slim) : NONE;
  return {
    lines: [
      { way: 'across', line: box.y - 20, from: box.x, to: right, edge: box.y - 20 },
      { way: 'down', line: right + out, from: box.y, to: bottom, edge: right + out },
      ...borders.lines,
    ],
    labels: [
      {
        at: [box.x + box.width / 2, box.y - 28],
        anchor: 'middle',
        lines: [across.join(' ')],
        why,
      },
      {
        at: [right + out + (slim ? 5 : 9), box.y + box.height / 2],
        anchor: 'start',
        lines: slim ? [size.mm[1].toFixed(1)] : down,
        why,
      },
      ...borders.labels,
      ...(frame && !slim ? shares(frame, box) : []),
    ],
  };
}

const NONE: Dimensions = { lines: [], labels: [] };

type Size = NonNullable<BenchFace['size']>;

function sizeWords({ mm, sd, from }: Size, k: 0 | 1): string[] {
  if (sd) return [mm[k].toFixed(2), `± ${sayDoubt(sd[k], 2)} mm`];
  return from === 'told' ? [`${mm[k]} mm`, 'as told'] : [`${mm[k].toFixed(2)} mm`];
}

/** Where the size of a card comes from, in plain words. */
export function whySize({ sd, from }: Size): string {
  if (from === 'told') {
    return 'Not measured: the size that the dossier tells (width_mm, height_mm), which gives the picture its scale.';
  }
  const doubt = sd ? ' The doubt holds 95 of 100.' : '';
  return `Measured between the straight sides, by the scale that the scan states.${doubt}`;
}

/** Where the width of a border comes from, in plain words. */
export const WHY_BORDER =
  'From the card’s edge to the outermost printed line, along the middle of the card, in millimetres of the card.';

/** Where the shares of centering come from, in plain words. */
export const WHY_SHARES =
  'Shares of the two borders across the card, which add up to 100. The doubt holds 95 of 100.';

type Borders = NonNullable<NonNullable<BenchFace['frame']>['borders']>;

function borderLines(borders: Borders, box: Part, [w, h]: Place, slim: boolean): Dimensions {
  const [right, bottom] = [box.x + box.width, box.y + box.height];
  const across = (mm: number) => (mm / w) * box.width;
  const down = (mm: number) => (mm / h) * box.height;
  const out = outOf(slim);
  const under = { way: 'across', line: bottom + outOf(false), edge: bottom } as const;
  const beside = { way: 'down', line: box.x - out, edge: box.x } as const;
  const said = (mm: number) => `${mm.toFixed(2)} mm`;
  const aside = (mm: number) => (slim ? mm.toFixed(2) : said(mm));
  const left = box.x - out - (slim ? 6 : 8);
  const foot = bottom + outOf(false) + 4;
  return {
    lines: [
      { ...beside, from: box.y, to: box.y + down(borders.top) },
      { ...beside, from: bottom - down(borders.bottom), to: bottom },
      { ...under, from: box.x, to: box.x + across(borders.left) },
      { ...under, from: right - across(borders.right), to: right },
    ],
    labels: [
      label(left, box.y + down(borders.top) / 2 + 4, 'end', aside(borders.top)),
      label(left, bottom - down(borders.bottom) / 2 + 4, 'end', aside(borders.bottom)),
      label(box.x - 8, foot, 'end', said(borders.left)),
      label(right + 8, foot, 'start', said(borders.right)),
    ].map((one) => ({ ...one, why: WHY_BORDER })),
  };
}

function label(x: number, y: number, anchor: Label['anchor'], words: string): Label {
  return { at: [x, y], anchor, lines: [words] };
}

function shares(frame: NonNullable<BenchFace['frame']>, box: Part): readonly Label[] {
  const { leftRight, topBottom, sd } = frame;
  const out = outOf(false);
  return [
    {
      at: [box.x - out - 8, box.y + box.height / 2],
      anchor: 'end',
      lines: [sayShares(topBottom), `± ${sayDoubt(sd[1], 1)} top to bottom`],
      why: WHY_SHARES,
    },
    {
      at: [box.x + box.width / 2, box.y + box.height + out + 4],
      anchor: 'middle',
      lines: [sayShares(leftRight), `± ${sayDoubt(sd[0], 1)} left to right`],
      why: WHY_SHARES,
    },
  ];
}

/** Shares of centering as they are printed, `46.7 : 53.3`. */
export function sayShares([first, second]: Place): string {
  return `${first.toFixed(1)} : ${second.toFixed(1)}`;
}

/** What of the card is shown, where it is not all of it. */
export function partDimensions(part: Part, box: Part, slim: boolean): Dimensions {
  const [right, bottom] = [box.x + box.width, box.y + box.height];
  const out = outOf(slim);
  return {
    lines: [
      { way: 'across', line: box.y - 20, from: box.x, to: right, edge: box.y - 20 },
      { way: 'down', line: right + out, from: box.y, to: bottom, edge: right + out },
    ],
    labels: [
      label(box.x + box.width / 2, box.y - 28, 'middle', `${part.width.toFixed(1)} mm shown`),
      label(right + out + (slim ? 5 : 9), box.y + box.height / 2, 'start', part.height.toFixed(1)),
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
