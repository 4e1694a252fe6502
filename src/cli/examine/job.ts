import { resolve } from 'node:path';
import type { SizeMm } from '../../bench/index.ts';
import { WrongCall } from '../wrong-call.ts';

/** The pictures of one copy and what is known of it, as the measuring thread takes it. */
export interface Job {
  readonly front: string;
  readonly back: string | null;
  readonly cardMm: SizeMm | null;
  readonly dpi: number | null;
  readonly raking: readonly RakingFile[];
}

/** A picture of the front under a low lamp; degrees counter-clockwise from the picture's x axis. */
export interface RakingFile {
  readonly file: string;
  readonly azimuthDeg: number | null;
}

/** Shortest and longest side of a card, in millimetres, and dots an inch that are believed. */
const SIDE_MM = [10, 500] as const;
const DPI = [10, 20_000] as const;

/** A job written as a line of JSON, its files found from `folder`. Throws `WrongCall` where it says what is wrong. */
export function jobOf(line: string, folder: string): Job {
  const told = parsed(line);
  const path = (value: unknown, key: string): string => {
    if (typeof value === 'string' && value !== '' && !value.includes('\0'))
      return resolve(folder, value);
    throw new WrongCall(`"${key}" must be the name of a file, found ${shown(value)}.`);
  };
  return {
    front: path(told.front, 'front'),
    back: isTold(told.back) ? path(told.back, 'back') : null,
    cardMm: isTold(told.card_mm) ? cardOf(told.card_mm) : null,
    dpi: isTold(told.dpi) ? dpiOf(told.dpi) : null,
    raking: rakingOf(told.raking, path),
  };
}

/** Width and height of a card, checked. Throws `WrongCall` for what no card is. */
export function cardOf(value: unknown): SizeMm {
  const [least, most] = SIDE_MM;
  const fits = (side: unknown) => typeof side === 'number' && side >= least && side <= most;
  if (Array.isArray(value) && value.length === 2 && value.every(fits))
    return [value[0], value[1]] as SizeMm;
  throw new WrongCall(
    `A card is two sides of ${least} to ${most} mm, such as 63x88 ([63, 88] in JSON), found ${shown(value)}.`,
  );
}

/** Width and height of a card written as `63x88`. Throws `WrongCall` for what no card is. */
export function cardIn(text: string): SizeMm {
  const match = /^(\d+(?:\.\d+)?)\s*[x×]\s*(\d+(?:\.\d+)?)$/i.exec(text);
  return cardOf(match ? [Number(match[1]), Number(match[2])] : text);
}

/** Dots an inch, checked. Throws `WrongCall` for what no scanner gives. */
export function dpiOf(value: unknown): number {
  if (typeof value === 'number' && value >= DPI[0] && value <= DPI[1]) return value;
  throw new WrongCall(`Dots an inch are from ${DPI[0]} to ${DPI[1]}, found ${shown(value)}.`);
}

function rakingOf(value: unknown, path: (file: unknown, key: string) => string) {
  if (!isTold(value)) return [];
  if (!Array.isArray(value)) throw new WrongCall(`"raking" must be a list, found ${shown(value)}.`);
  return value.map((one: unknown): RakingFile => {
    const { file, azimuth_deg: azimuth } = (one ?? {}) as { file?: unknown; azimuth_deg?: unknown };
    if (isTold(azimuth) && !Number.isFinite(azimuth))
      throw new WrongCall(`"azimuth_deg" must be a number, found ${shown(azimuth)}.`);
    return {
      file: path(file, 'file'),
      azimuthDeg: typeof azimuth === 'number' ? azimuth : null,
    };
  });
}

/** A job as it may be written; nothing of it is believed. */
interface Written {
  readonly front?: unknown;
  readonly back?: unknown;
  readonly card_mm?: unknown;
  readonly dpi?: unknown;
  readonly raking?: unknown;
}

function parsed(line: string): Written {
  let value: unknown;
  try {
    value = JSON.parse(line);
  } catch {
    throw new WrongCall(`The line is no JSON: ${shown(line)}.`);
  }
  if (value instanceof Object && !Array.isArray(value)) return value;
  throw new WrongCall(`A job is an object such as {"front": "front.jpg"}, found ${shown(value)}.`);
}

function isTold(value: unknown): boolean {
  return value !== undefined && value !== null;
}

function shown(value: unknown): string {
  const text = JSON.stringify(value) ?? String(value);
  return text.length > 60 ? `${text.slice(0, 57)}…` : text;
}
