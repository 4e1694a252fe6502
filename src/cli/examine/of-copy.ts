import { stat } from 'node:fs/promises';
import { basename, join } from 'node:path';
import {
  annotationsOn,
  goRound,
  type Hands,
  handsOf,
  type SetByHand,
  type SizeMm,
  setOn,
  type Told,
} from '../../bench/index.ts';
import { conditionWordsOf, copiesOf, type Dossier, gradeSettingOf } from '../../dossier/index.ts';
import { WrongCall } from '../wrong-call.ts';
import { cardOf } from './job.ts';
import { ALONE, type FacesByHand } from './measure.ts';
import { type Photos, photosIn } from './photos.ts';
import { type Setup, setupIn } from './setup.ts';

/** The pictures of a copy, with what its dossier tells and what hands set on them. */
export interface CopyKnown {
  readonly photos: Photos;
  readonly cardMm: SizeMm | null;
  readonly told: Told;
  readonly byHand: FacesByHand;
}

/**
 * The pictures of a copy and what is known of it. Throws `WrongCall` for what no id is, where there is
 * no front, and where corners set by hand are no card's.
 */
export async function copyIn(folder: string, dossier: Dossier, copy: string): Promise<CopyKnown> {
  if (!/^[a-z0-9][a-z0-9-]*$/.test(copy)) throw new WrongCall(`${copy} is no id of a copy.`);
  const photos = await photosIn(join(folder, 'desk', 'photos', copy));
  const { width_mm: width, height_mm: height } = dossier.manifest;
  const kept = `desk/examinations/${copy}.json`;
  const hands = handsOf(dossier.documents.get(kept));
  return {
    photos,
    cardMm: width !== null && height !== null ? cardOf([width, height]) : null,
    told: toldOf(dossier, copy, annotationsOf(photos, hands)),
    byHand: { front: checked(hands, 'front', kept), back: checked(hands, 'back', kept) },
  };
}

function checked(hands: Hands, side: keyof FacesByHand, file: string): SetByHand {
  const set = setOn(hands, side);
  if (set.corners === null || goRound(set.corners)) return set;
  throw new WrongCall(
    `${file}: hand.${side} must be the four corners of the card clockwise from its top left, found ${JSON.stringify(set.corners)}.`,
  );
}

/** The pictures of a folder of which nothing else is known; null where `path` is none. */
export async function folderAt(path: string): Promise<CopyKnown | null> {
  const found = await stat(path).catch(() => undefined);
  if (!found?.isDirectory()) return null;
  return { photos: await photosIn(path), cardMm: null, told: ALONE.told, byHand: ALONE.byHand };
}

function annotationsOf({ front, back }: Photos, hands: Hands): Told['annotations'] {
  const on = (file: string | null) => (file === null ? [] : annotationsOn(hands, basename(file)));
  return { front: on(front), back: on(back) };
}

/** What a dossier tells of a copy: marks set by hand, the seller's words, and what a grade rests on. */
function toldOf(dossier: Dossier, id: string, annotations: Told['annotations']): Told {
  const row = copiesOf(dossier).find((copy) => copy.id === id);
  return {
    annotations,
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
