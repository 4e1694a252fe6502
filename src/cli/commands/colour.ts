import { coloursBy, coloursJson } from '../chart-colours.ts';
import { chartIn } from '../chart-file.ts';
import { writeJson } from '../json.ts';
import { pictureIn } from '../picture.ts';
import { colourReport } from '../report/colour.ts';
import type { Terminal } from '../terminal.ts';

/** Corrects a picture by its chart and measures the other patches; too few usable ones are a wrong call. */
export async function colour(
  file: string,
  { chart: chartFile, json = false }: { chart: string; json?: boolean },
  terminal: Terminal,
): Promise<0> {
  const chart = await chartIn(chartFile);
  const { picture, decode } = await pictureIn(file);
  const began = performance.now();
  const colours = coloursBy(picture, chart);
  const measure = performance.now() - began;
  if (json) await writeJson({ ...coloursJson(colours), ms: { decode, measure } }, terminal);
  else await terminal.write(colourReport(colours, terminal.width));
  return 0;
}
