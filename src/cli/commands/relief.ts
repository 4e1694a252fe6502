import { type CardMap, depthMapOf, type Relief } from '../../bench/index.ts';
import { PictureFault } from '../../host/index.ts';
import { asStored, reliefDefectJson } from '../examine/answer.ts';
import { type LampsMeasured, lampsMeasured } from '../examine/lamps.ts';
import { setupIn } from '../examine/setup.ts';
import { reliefSheet } from '../findings/relief-sheet.ts';
import { writeJson } from '../json.ts';
import { reliefReport } from '../report/relief.ts';
import type { Terminal } from '../terminal.ts';
import { writeAsked } from '../written.ts';
import { WrongCall } from '../wrong-call.ts';

/** Measures dents from pictures under a moved lamp; answers 1 where the set cannot show any. */
export async function relief(
  file: string,
  { json = false, out }: { json?: boolean; out?: string },
  terminal: Terminal,
): Promise<0 | 1> {
  const { first, hypotheses, outline, map, relief: found, faults, ms } = await lampsOr(file);
  if (out !== undefined && map && found) await drawn(out, found, map);
  if (json)
    await writeJson(
      {
        outline: outline ? asStored(outline.corners, first) : null,
        p_outline: hypotheses[0]?.p ?? 0,
        defects: found ? found.defects.map(reliefDefectJson) : [],
        limits: found?.limits ?? [],
        faults,
        ms,
      },
      terminal,
    );
  else
    await terminal.write(
      reliefReport(found?.defects ?? [], found?.limits ?? [], faults, terminal.width),
    );
  return faults.length > 0 ? 1 : 0;
}

/** Draws the relief into a file; nothing where the pictures tell no slopes, which the faults explain. */
async function drawn(file: string, { slopes, defects }: Relief, map: CardMap): Promise<void> {
  if (!slopes) return;
  await writeAsked(file, await reliefSheet(depthMapOf(slopes, map), defects, map.sizeMm));
}

async function lampsOr(file: string): Promise<LampsMeasured> {
  const setup = await setupIn(file);
  try {
    return await lampsMeasured(setup);
  } catch (error) {
    if (error instanceof PictureFault) throw new WrongCall(error.message);
    throw error;
  }
}
