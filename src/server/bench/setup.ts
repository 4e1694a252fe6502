import { readFile } from 'node:fs/promises';
import { basename, join } from 'node:path';
import { z } from 'zod';
import type { Ball, LampPicture } from '../../bench/index.ts';

const number = z.number();
const SetupSchema = z.object({
  pictures: z.array(
    z.object({ file: z.string(), lamp_mm: z.tuple([number, number, number.positive()]).nullish() }),
  ),
  ball: z
    .object({
      centre_px: z.tuple([number, number]),
      radius_px: number.positive(),
      radius_mm: number.positive(),
    })
    .nullish(),
});

/** Where the lamps of a copy stood, by the names of their pictures, and the ball beside the card. */
export interface LampsSetup {
  readonly lamps: ReadonlyMap<string, LampPicture['lampMm']>;
  readonly ball: Ball | null;
  /** Why the setup was not understood; empty where it was, or where there is none. */
  readonly fault: string;
}

/** Reads `setup.json` of a copy's folder. Pictures elsewhere are not followed. */
export async function lampsSetupIn(folder: string): Promise<LampsSetup> {
  const file = join(folder, 'setup.json');
  const text = await readFile(file, 'utf8').catch((error: NodeJS.ErrnoException) => {
    if (error.code === 'ENOENT') return undefined;
    throw error;
  });
  const none = { lamps: new Map(), ball: null };
  if (text === undefined) return { ...none, fault: '' };
  const read = SetupSchema.safeParse(parsed(text));
  if (!read.success) {
    const issue = read.error.issues[0];
    return {
      ...none,
      fault: `setup.json is not understood: ${issue?.path.join('.')}: ${issue?.message}.`,
    };
  }
  const { pictures, ball } = read.data;
  return {
    lamps: new Map(pictures.map((one) => [basename(one.file), one.lamp_mm ?? null])),
    ball: ball
      ? { centrePx: ball.centre_px, radiusPx: ball.radius_px, radiusMm: ball.radius_mm }
      : null,
    fault: '',
  };
}

function parsed(text: string): unknown {
  try {
    return JSON.parse(text);
  } catch {
    // What is no JSON has none of the keys that are looked for, and is told so.
    return undefined;
  }
}
