import { readFile } from 'node:fs/promises';
import { dirname, resolve } from 'node:path';
import type { Ball, LampPicture, SizeMm } from '../../bench/index.ts';
import { reasonOf } from '../dossier.ts';
import { WrongCall } from '../wrong-call.ts';
import { cardOf } from './job.ts';

/** Pictures of the front under a lamp that was moved, and where it stood. */
export interface Setup {
  readonly cardMm: SizeMm;
  readonly pictures: readonly {
    readonly file: string;
    readonly lampMm: LampPicture['lampMm'];
  }[];
  readonly ball: Ball | null;
}

const MOST_PICTURES = 32;

/** Reads a setup; its files are found from its own folder. Throws `WrongCall` where it says what is wrong. */
export async function setupIn(file: string): Promise<Setup> {
  const text = await readFile(file, 'utf8').catch((error: NodeJS.ErrnoException) => {
    throw new WrongCall(`${file} cannot be opened: ${reasonOf(error)}.`);
  });
  const told = parsed(file, text);
  const { pictures } = told;
  if (!Array.isArray(pictures) || pictures.length === 0 || pictures.length > MOST_PICTURES)
    throw new WrongCall(`${file}: "pictures" must be a list of 1 to ${MOST_PICTURES}.`);
  return {
    cardMm: cardOf(told.card_mm),
    pictures: pictures.map((one: unknown) => pictureOf(file, one)),
    ball: told.ball === undefined || told.ball === null ? null : ballOf(file, told.ball),
  };
}

interface Written {
  readonly card_mm?: unknown;
  readonly pictures?: unknown;
  readonly ball?: unknown;
}

function parsed(file: string, text: string): Written {
  try {
    const value: unknown = JSON.parse(text);
    if (value instanceof Object && !Array.isArray(value)) return value;
  } catch {
    throw new WrongCall(`${file} is no JSON.`);
  }
  throw new WrongCall(`${file} must hold an object with "card_mm" and "pictures".`);
}

function pictureOf(setup: string, one: unknown): Setup['pictures'][number] {
  const { file, lamp_mm: lamp } = (one ?? {}) as { file?: unknown; lamp_mm?: unknown };
  if (typeof file !== 'string' || file === '' || file.includes('\0'))
    throw new WrongCall(`${setup}: each picture must have a "file".`);
  const path = resolve(dirname(setup), file);
  if (lamp === undefined || lamp === null) return { file: path, lampMm: null };
  if (!isNumbers(lamp, 3) || !((lamp[2] as number) > 0))
    throw new WrongCall(
      `${setup}: "lamp_mm" must be [x, y, z] with z above the card, for ${file}.`,
    );
  return { file: path, lampMm: lamp as unknown as LampPicture['lampMm'] };
}

function ballOf(setup: string, value: unknown): Ball {
  const ball = value as { centre_px?: unknown; radius_px?: unknown; radius_mm?: unknown };
  const { centre_px: centre, radius_px: px, radius_mm: mm } = ball;
  if (isNumbers(centre, 2) && isNumbers([px, mm], 2) && Number(px) > 0 && Number(mm) > 0)
    return {
      centrePx: [centre[0] as number, centre[1] as number],
      radiusPx: Number(px),
      radiusMm: Number(mm),
    };
  throw new WrongCall(`${setup}: "ball" must have "centre_px", "radius_px" and "radius_mm".`);
}

function isNumbers(value: unknown, count: number): value is readonly number[] {
  return Array.isArray(value) && value.length === count && value.every(Number.isFinite);
}
