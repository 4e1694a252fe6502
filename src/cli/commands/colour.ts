import type { Picture } from '../../bench/index.ts';
import { type ChartColours, coloursBy, coloursJson } from '../chart-colours.ts';
import { type ChartFile, chartIn } from '../chart-file.ts';
import { writeJson } from '../json.ts';
import { pictureIn } from '../picture.ts';
import { colourReport } from '../report/colour.ts';
import type { Terminal } from '../terminal.ts';
import { WrongCall } from '../wrong-call.ts';

/** Corrects a picture by its chart and measures the other patches; too few usable ones are a wrong call. */
export async function colour(
  file: string,
  { chart: chartFile, json = false }: { chart: string; json?: boolean },
  terminal: Terminal,
): Promise<0> {
  const chart = await chartIn(chartFile);
  const { picture, decode } = await pictureIn(file);
  const began = performance.now();
  const colours = coloursIn(file, picture, chart);
  const measure = performance.now() - began;
  if (json) await writeJson({ ...coloursJson(colours), ms: { decode, measure } }, terminal);
  else await terminal.write(colourReport(colours, terminal.width));
  return 0;
}

function coloursIn(file: string, picture: Picture, chart: ChartFile): ChartColours {
  try {
    return coloursBy(picture, chart);
  } catch (error) {
    throw error instanceof WrongCall ? new WrongCall(`${file}: ${error.message}`) : error;
  }
}
