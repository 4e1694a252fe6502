import type { Canvas } from '../render/canvas.ts';
import { chartOf, renderChart } from '../render/chart.ts';
import { paintFace } from '../render/face.ts';
import type { Rgb } from '../render/light.ts';
import { type Printing, renderCut, truthOfCut } from '../render/screens.ts';
import { SPECIMENS, type Specimen } from './specimens.ts';

const SIZE_PX = 520;
/** Where the cut begins on the card, in millimetres: at the bell. */
const FROM = [24, 20] as const;

/** The ruling and angles of a copy's print; no two inks share an angle. */
function printingOf({ lpi }: Pick<Specimen, 'lpi'>): Printing {
  return {
    process: 'halftone',
    lpi,
    anglesDeg: [15, 75, 0, 45],
    registrationMm: [
      [0.01, 0],
      [-0.02, 0.015],
      [0.01, 0.02],
      [0, 0],
    ],
  };
}

/** A cut of a copy's front at 1,200 dpi, from its top left corner, so many pixels wide and high. */
export function cutOf(id: string, sizePx = SIZE_PX) {
  const one = specimen(id);
  const canvas = paintFace({ ...one.front, foil: 0 }, 24);
  const lightAt = (x: number, y: number) => nearest(canvas, FROM[0] + x, FROM[1] + y);
  return renderCut({ ...layOf(one), sizePx, lightAt }, seedOf(one));
}

/** What is true of a cut, without rendering it. */
export function truthOfCutOf(id: string) {
  const one = specimen(id);
  return truthOfCut(layOf(one), seedOf(one));
}

function layOf(one: Specimen) {
  return { printing: printingOf(one), sizePx: SIZE_PX, scanRotationDeg: 0.4 };
}

function seedOf({ lpi }: Specimen): number {
  return 300 + lpi;
}

function specimen(id: string): Specimen {
  const one = SPECIMENS[id];
  if (!one) throw new RangeError(`no copy ${id}`);
  return one;
}

function nearest({ values, scale, margin, width }: Canvas, x: number, y: number): Rgb {
  const k = 4 * (Math.floor((y + margin) * scale) * width + Math.floor((x + margin) * scale));
  return [values[k]!, values[k + 1]!, values[k + 2]!];
}

/** A chart beside colours of hare-1, as they are in truth. */
const CHART_COLOURS: readonly Rgb[] = [
  [38, -8, -22],
  [62, 14, 52],
  [78, 4, 12],
  [52, 18, 24],
  [84, 2, 9],
  [47, -10, -20],
];

const CHART_SEED = 41;

/** Where the patches of the chart are, and their colours. */
export function chart() {
  return chartOf(CHART_COLOURS, CHART_SEED);
}

/** The picture of the chart. */
export function chartPicture() {
  return renderChart(chart(), CHART_SEED);
}
