import { stat } from 'node:fs/promises';
import { join } from 'node:path';
import type { SizeMm, Told } from '../../bench/index.ts';
import { conditionWordsOf, copiesOf, type Dossier, gradeSettingOf } from '../../dossier/index.ts';
import { dossierIn } from '../dossier.ts';
import { WrongCall } from '../wrong-call.ts';
import { cardOf } from './job.ts';
import { ALONE } from './measure.ts';
import type { Photos } from './photos.ts';
import { type Setup, setupIn } from './setup.ts';

/** The folder of a copy's pictures, with what its dossier tells; null where a picture is named. */
export interface CopyFolder {
  readonly folder: string;
  readonly cardMm: SizeMm | null;
  readonly told: Told;
}

/** Where the pictures of a copy lie and what is known of it. Throws `WrongCall` for what no id is. */
export async function copyFolder(
  front: string,
  copy: string | undefined,
): Promise<CopyFolder | null> {
  if (copy !== undefined) {
    if (!/^[a-z0-9][a-z0-9-]*$/.test(copy)) throw new WrongCall(`${copy} is no id of a copy.`);
    const dossier = await dossierIn(front);
    const { width_mm: width, height_mm: height } = dossier.manifest;
    return {
      folder: join(front, 'desk', 'photos', copy),
      cardMm: width !== null && height !== null ? cardOf([width, height]) : null,
      told: toldOf(dossier, copy),
    };
  }
  const found = await stat(front).catch(() => undefined);
  return found?.isDirectory() ? { folder: front, cardMm: null, told: ALONE.told } : null;
}

/** What a dossier tells of a copy: the seller's words, and what a grade rests on. */
function toldOf(dossier: Dossier, id: string): Told {
  const row = copiesOf(dossier).find((copy) => copy.id === id);
  return {
    ...ALONE.told,
    listing: row?.listing ?? '',
    words: conditionWordsOf(dossier),
    setting: gradeSettingOf(dossier, row ?? { service: '', printing: '' }),
  };
}

/** Pictures under a moved lamp in a folder: as its setup says, else by their names alone. */
export async function lampsIn(
  { lamps, setup }: Photos,
  cardMm: SizeMm | null,
): Promise<Setup | null> {
  if (setup !== null) return await setupIn(setup);
  if (lamps.length < 4 || cardMm === null) return null;
  return { cardMm, pictures: lamps.map((file) => ({ file, lampMm: null })), ball: null };
}
