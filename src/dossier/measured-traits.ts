import type { Reading } from '../catalogue/index.ts';

/** A ruling that a scan tells, one standard error in lines an inch. Common practice, no source. */
const RULING_SD = 0.5;

/**
 * What the bench measured on a copy, from its examination: the size that a scan's dots an inch tell
 * (a size that was told is no measurement), and the ruling and process of the print. Its parts are
 * those that `examine --json` and `screen --json` print, under `machine` or at the top.
 */
export function measuredOf(document: unknown): readonly Reading[] {
  const { machine } = partsOf(document);
  const { front, screen } = partsOf(machine ?? document);
  const { size_mm: size, size_sd_mm: sds, size_from: from } = partsOf(front);
  const sides = from === 'dpi' && Array.isArray(size) && Array.isArray(sds) ? [0, 1] : [];
  const sizes = sides.flatMap((i) => numberOf(['width', 'height'][i] ?? '', size, sds, i));
  const { screens, process } = partsOf(screen);
  const [strongest] = Array.isArray(screens) ? screens : [];
  const { lpi } = partsOf(strongest);
  const ruling = isNumber(lpi) ? [reading('screen', lpi, RULING_SD, 'ruling')] : [];
  const none: readonly Reading[] =
    process === 'continuous'
      ? [{ trait: 'screen', value: { is: 'none' }, sees: 'scan', sd: null }]
      : [];
  return [...sizes, ...ruling, ...none];
}

function numberOf(trait: string, size: unknown, sds: unknown, i: number): readonly Reading[] {
  const [value, sd] = [size, sds].map((list) => (Array.isArray(list) ? list[i] : null));
  return isNumber(value) && isNumber(sd) ? [reading(trait, value, sd, 'length')] : [];
}

function reading(trait: string, value: number, sd: number, measure: string): Reading {
  const number = { is: 'number', value, tolerance: null, rounding: 0, measure } as const;
  return { trait, value: number, sees: 'scan', sd };
}

function isNumber(value: unknown): value is number {
  return typeof value === 'number' && Number.isFinite(value);
}

function partsOf(value: unknown): Readonly<Record<string, unknown>> {
  return typeof value === 'object' && value !== null ? { ...value } : {};
}
