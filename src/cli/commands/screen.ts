import { printProcessOf } from '../../bench/index.ts';
import { writeJson } from '../json.ts';
import { pictureIn } from '../picture.ts';
import { processJson } from '../process-json.ts';
import { screenReport } from '../report/screen.ts';
import type { Terminal } from '../terminal.ts';
import { WrongCall } from '../wrong-call.ts';

/** Tells the print process from a scan; a scan that cannot tell it is a wrong call. */
export async function screen(
  file: string,
  { json = false, dpi }: { json?: boolean; dpi?: number },
  terminal: Terminal,
): Promise<0> {
  const { picture, decode } = await pictureIn(file);
  const began = performance.now();
  const found = printProcessOf(picture, dpi ?? picture.dpi);
  const measure = performance.now() - began;
  if ('why' in found) throw new WrongCall(`${file}: ${found.why}`);
  if (json) await writeJson({ ...processJson(found), ms: { decode, measure } }, terminal);
  else await terminal.write(screenReport(found, terminal.width));
  return 0;
}
