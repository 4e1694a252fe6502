import type { Ball, LampPicture } from './types.ts';

/** Where the lamps of a set stood, as a collector writes it down in `setup.json`. */
export interface LampSetup {
  /** As written, and not checked; undefined where it is not told. */
  readonly cardMm: unknown;
  readonly pictures: readonly {
    readonly file: string;
    readonly lampMm: LampPicture['lampMm'];
  }[];
  readonly ball: Ball | null;
}

const MOST_PICTURES = 32;

/** Reads a setup from its text. Throws a RangeError that says what was expected. */
export function lampSetupOf(text: string): LampSetup {
  const { card_mm: cardMm, pictures, ball } = parsed(text);
  if (!Array.isArray(pictures) || pictures.length === 0 || pictures.length > MOST_PICTURES)
    throw new RangeError(`"pictures" must be a list of 1 to ${MOST_PICTURES}`);
  return {
    cardMm,
    pictures: pictures.map(pictureOf),
    ball: ball === undefined || ball === null ? null : ballOf(ball),
  };
}

interface Written {
  readonly card_mm?: unknown;
  readonly pictures?: unknown;
  readonly ball?: unknown;
}

function parsed(text: string): Written {
  let value: unknown;
  try {
    value = JSON.parse(text);
  } catch {
    throw new RangeError('it is no JSON');
  }
  if (value instanceof Object && !Array.isArray(value)) return value;
  throw new RangeError('it must be an object with "card_mm" and "pictures"');
}

function pictureOf(one: unknown): LampSetup['pictures'][number] {
  const { file, lamp_mm: lamp } = (one ?? {}) as { file?: unknown; lamp_mm?: unknown };
  if (typeof file !== 'string' || file === '' || file.includes('\0'))
    throw new RangeError('each picture must have a "file"');
  if (lamp === undefined || lamp === null) return { file, lampMm: null };
  if (!isNumbers(lamp, 3) || !((lamp[2] as number) > 0))
    throw new RangeError(`"lamp_mm" must be [x, y, z] with z above the card, for ${file}`);
  return { file, lampMm: lamp as unknown as LampPicture['lampMm'] };
}

function ballOf(value: object): Ball {
  const ball = value as { centre_px?: unknown; radius_px?: unknown; radius_mm?: unknown };
  const { centre_px: centre, radius_px: px, radius_mm: mm } = ball;
  if (isNumbers(centre, 2) && isNumbers([px, mm], 2) && Number(px) > 0 && Number(mm) > 0)
    return {
      centrePx: [centre[0] as number, centre[1] as number],
      radiusPx: Number(px),
      radiusMm: Number(mm),
    };
  throw new RangeError('"ball" must have "centre_px", "radius_px" and "radius_mm"');
}

function isNumbers(value: unknown, count: number): value is readonly number[] {
  return Array.isArray(value) && value.length === count && value.every(Number.isFinite);
}
