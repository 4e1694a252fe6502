import { rectified, type SizeMm } from '../../bench/index.ts';
import type { Paper, PointedPlace, SitePicture } from '../../chronicle/index.ts';
import {
  decodePicture,
  type PublishedPicture,
  pdfOf,
  publishedPicture,
  shownSamples,
} from '../../host/index.ts';
import { cardOn } from '../card-on.ts';
import { marksOn } from '../pointed.ts';
import { settled } from '../settled.ts';

/** A picture for a site, from its file. */
interface PictureWish {
  readonly file: string;
  readonly widths: readonly number[];
  /** Size of the card; null where it is not known, and nothing is pointed at. */
  readonly sizeMm: SizeMm | null;
  readonly places: readonly PointedPlace[];
}

/** What hands can do; each takes and gives what can be copied between threads. */
export const WORK = { picture, still, document };

async function picture({ file, widths, sizeMm, places }: PictureWish): Promise<{
  readonly sizes: readonly PublishedPicture[];
  readonly marks: SitePicture['marks'];
}> {
  const decoded = await decodePicture(file);
  const pointed = sizeMm !== null && places.length > 0;
  const marks = pointed ? marksOn(decoded, sizeMm, places) : undefined;
  return { sizes: await publishedPicture(decoded, widths), marks };
}

/** Pixels a millimetre of a card on stills, and widest picture. */
const FINENESS = 12;
const WIDEST = 1200;

/** A picture for stills, laid straight where the outline of its card is found. */
async function still({ file, sizeMm }: Pick<PictureWish, 'file' | 'sizeMm'>): Promise<{
  readonly bytes: Uint8Array;
  readonly width: number;
  readonly height: number;
  /** It was laid straight. */
  readonly toEdges: boolean;
}> {
  const decoded = await decodePicture(file);
  const map = sizeMm ? cardOn(decoded, sizeMm) : undefined;
  const shown = map ? rectified(decoded, map, FINENESS, 0) : decoded;
  const bytes = await shownSamples(shown, WIDEST);
  const width = Math.min(WIDEST, shown.width);
  const height = (shown.height * width) / shown.width;
  return { bytes, width, height, toEdges: map !== undefined };
}

/** A document as PDF, in the setting that suits it. */
async function document(of: {
  readonly settings: readonly Paper[];
  readonly pictures: ReadonlyMap<string, Uint8Array>;
}): Promise<Uint8Array> {
  const { bytes } = await settled(of, (paper) => pdfOf(paper, of.pictures));
  return bytes;
}
