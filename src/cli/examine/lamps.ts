import { basename } from 'node:path';
import {
  type CardMap,
  cardMapOf,
  findOutline,
  type Outline,
  type Relief,
  reliefOf,
} from '../../bench/index.ts';
import { type DecodedPicture, decodePicture } from '../../host/index.ts';
import type { Setup } from './setup.ts';

/** What pictures under a moved lamp gave. */
export interface LampsMeasured {
  readonly first: DecodedPicture;
  readonly hypotheses: readonly Outline[];
  /** The card in the first picture; null where no outline is sure. */
  readonly outline: Outline | null;
  readonly map: CardMap | null;
  readonly relief: Relief | null;
  /** What is wrong with the set, in sentences. */
  readonly faults: readonly string[];
  /** Milliseconds. */
  readonly ms: { readonly decode: number; readonly measure: number };
}

/** Reads the pictures of a setup and measures the relief. Throws PictureFault where one cannot be read. */
export async function lampsMeasured(setup: Setup): Promise<LampsMeasured> {
  const began = performance.now();
  const pictures: DecodedPicture[] = [];
  for (const { file } of setup.pictures) pictures.push(await decodePicture(file));
  const read = performance.now();
  const first = pictures[0] as DecodedPicture;
  const { hypotheses, trouble } = findOutline(first, { sizeMm: setup.cardMm, dpi: null });
  const outline = (trouble ? undefined : hypotheses[0]) ?? null;
  const map = outline && cardMapOf(outline.corners, setup.cardMm, outline.lens);
  const lit = pictures.map((picture, i) => ({
    picture,
    lampMm: setup.pictures[i]?.lampMm ?? null,
    name: basename(setup.pictures[i]?.file ?? ''),
  }));
  const relief = map && reliefOf(lit, map, setup.ball);
  return {
    ...{ first, hypotheses, outline, map, relief },
    faults: relief?.faults ?? (trouble ? [trouble.words] : []),
    ms: { decode: read - began, measure: performance.now() - read },
  };
}
