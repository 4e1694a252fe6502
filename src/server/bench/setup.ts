import { readFile } from 'node:fs/promises';
import { basename, join } from 'node:path';
import { type Ball, type LampPicture, lampSetupOf } from '../../bench/index.ts';

/** Where the lamps of a copy stood, by the names of their pictures, and the ball beside the card. */
export interface LampsSetup {
  readonly lamps: ReadonlyMap<string, LampPicture['lampMm']>;
  readonly ball: Ball | null;
  /** Why the setup was not understood; empty where it was, or where there is none. */
  readonly fault: string;
}

const NONE: LampsSetup = { lamps: new Map(), ball: null, fault: '' };

/** Reads `setup.json` of a copy's folder. Pictures elsewhere are not followed. */
export async function lampsSetupIn(folder: string): Promise<LampsSetup> {
  try {
    const { pictures, ball } = lampSetupOf(await readFile(join(folder, 'setup.json'), 'utf8'));
    const lamps = new Map(pictures.map(({ file, lampMm }) => [basename(file), lampMm] as const));
    return { lamps, ball, fault: '' };
  } catch (error) {
    if ((error as NodeJS.ErrnoException).code === 'ENOENT') return NONE;
    if (!(error instanceof RangeError)) throw error;
    return { ...NONE, fault: `setup.json is not understood: ${error.message}.` };
  }
}
