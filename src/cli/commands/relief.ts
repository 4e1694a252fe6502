import { mkdir } from 'node:fs/promises';
import { basename, dirname } from 'node:path';
import {
  type CardMap,
  cardMapOf,
  depthMapOf,
  findOutline,
  type Relief,
  reliefOf,
} from '../../bench/index.ts';
import { type DecodedPicture, decodePicture, PictureFault, replaceFile } from '../../host/index.ts';
import { reasonOf } from '../dossier.ts';
import { asStored, defectJson } from '../examine/answer.ts';
import { type Setup, setupIn } from '../examine/setup.ts';
import { reliefSheet } from '../findings/relief-sheet.ts';
import { writeJson } from '../json.ts';
import { reliefReport } from '../report/relief.ts';
import type { Terminal } from '../terminal.ts';
import { WrongCall } from '../wrong-call.ts';

/** Measures dents from pictures under a moved lamp; answers 1 where the set cannot show any. */
export async function relief(
  file: string,
  { json = false, out }: { json?: boolean; out?: string },
  terminal: Terminal,
): Promise<0 | 1> {
  const setup = await setupIn(file);
  const began = performance.now();
  const pictures = await decoded(setup);
  const read = performance.now();
  const [first] = pictures as [DecodedPicture];
  const { hypotheses, trouble } = findOutline(first, { sizeMm: setup.cardMm, dpi: null });
  const outline = trouble ? undefined : hypotheses[0];
  const map = outline && cardMapOf(outline.corners, setup.cardMm, outline.lens);
  const found =
    map &&
    reliefOf(
      pictures.map((picture, i) => ({
        picture,
        lampMm: setup.pictures[i]?.lampMm ?? null,
        name: basename(setup.pictures[i]?.file ?? ''),
      })),
      map,
      setup.ball,
    );
  const ms = { decode: read - began, measure: performance.now() - read };
  if (out !== undefined && map && found) await drawn(out, found, map);
  const faults = found?.faults ?? (trouble ? [trouble.words] : []);
  if (json)
    await writeJson(
      {
        outline: outline ? asStored(outline.corners, first) : null,
        p_outline: hypotheses[0]?.p ?? 0,
        defects: found ? defectsJson(found) : [],
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
  const sheet = await reliefSheet(depthMapOf(slopes, map), defects, map.sizeMm);
  try {
    await mkdir(dirname(file), { recursive: true });
    await replaceFile(file, new TextEncoder().encode(sheet));
  } catch (error) {
    throw new WrongCall(`${file} cannot be written: ${reasonOf(error as NodeJS.ErrnoException)}.`);
  }
}

async function decoded({ pictures }: Setup): Promise<readonly DecodedPicture[]> {
  const all: DecodedPicture[] = [];
  try {
    for (const { file } of pictures) all.push(await decodePicture(file));
  } catch (error) {
    if (error instanceof PictureFault) throw new WrongCall(error.message);
    throw error;
  }
  return all;
}

function defectsJson({ defects }: Relief): readonly object[] {
  return defects.map((defect) => ({
    ...defectJson(defect),
    diameter_mm: defect.diameterMm,
    depth_mm: defect.depthMm,
    height_mm: defect.heightMm,
    sd: {
      centre_mm: defect.sd.centreMm,
      diameter_mm: defect.sd.diameterMm,
      depth_mm: defect.sd.depthMm,
    },
  }));
}
