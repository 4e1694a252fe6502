import {
  cardAlone,
  type FaceAnswer,
  type PrintProcess,
  printProcessOf,
} from '../../bench/index.ts';
import { type DecodedPicture, decodePicture } from '../../host/index.ts';
import { type ChartColours, coloursBy } from '../chart-colours.ts';
import { chartIn } from '../chart-file.ts';
import { WrongCall } from '../wrong-call.ts';

/** Pictures of a copy beside its faces: a piece scanned finely, and one with a chart and its places. */
export interface Extras {
  readonly cut: string | null;
  readonly chart: { readonly picture: string; readonly places: string } | null;
}

/** How a copy was printed and what colours its chart tells, as far as its pictures do. */
export interface Printing {
  readonly process: PrintProcess | null;
  readonly colours: ChartColours | null;
  /** Why a picture that is there told nothing, in sentences. */
  readonly faults: readonly string[];
}

/** Dots an inch from which a scan of a whole face is asked for its print process. */
const FINE_DPI = 1150;

/** The print process from a fine scan, of the face or of a piece, and colours by a chart. */
export async function printingOf(
  { cut, chart }: Extras,
  { outline, trouble }: FaceAnswer,
  front: DecodedPicture,
  toldDpi: number | null,
): Promise<Printing> {
  const dpi = toldDpi ?? front.dpi;
  const fine = dpi !== null && dpi >= FINE_DPI && outline && !trouble;
  const scan = cut === null ? null : await decodePicture(cut);
  const found = fine
    ? printProcessOf(cardAlone(front, outline.corners), dpi)
    : scan && printProcessOf(scan, scan.dpi);
  const colours = chart && (await coloursOf(chart));
  return {
    process: found && !('why' in found) ? found : null,
    colours: colours && !('why' in colours) ? colours : null,
    faults: [found, colours].flatMap((one) => (one && 'why' in one ? [one.why] : [])),
  };
}

/** Colours by a chart; a chart that cannot be used is told and spoils nothing else. */
async function coloursOf({
  picture,
  places,
}: NonNullable<Extras['chart']>): Promise<ChartColours | { readonly why: string }> {
  try {
    return coloursBy(await decodePicture(picture), await chartIn(places));
  } catch (error) {
    if (error instanceof WrongCall) return { why: error.message };
    throw error;
  }
}
