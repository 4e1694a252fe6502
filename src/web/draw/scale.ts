/** A straight line from days to pixels: `from` lies at 0, `to` at `width`. */
export interface Scale {
  readonly from: number;
  readonly to: number;
  readonly width: number;
}

/** Where a day begins, in pixels. */
export function xOf(scale: Scale, day: number): number {
  return ((day - scale.from) / (scale.to - scale.from)) * scale.width;
}

/** The day, with its fraction, that lies at a pixel. */
export function dayAt(scale: Scale, x: number): number {
  return scale.from + (x / scale.width) * (scale.to - scale.from);
}

/**
 * The span of days after zooming by `factor` (2 shows half as much) with the day `about` held in
 * place, kept within `limits` and not shorter than `least` days.
 */
export function zoomed(
  span: readonly [number, number],
  factor: number,
  about: number,
  limits: readonly [number, number],
  least = 28,
): readonly [number, number] {
  const length = Math.max(least, Math.min((span[1] - span[0]) / factor, limits[1] - limits[0]));
  const share = (about - span[0]) / (span[1] - span[0]);
  return within([about - share * length, about + (1 - share) * length], limits);
}

/** The span moved by a number of days, as far as the limits let it. */
export function panned(
  span: readonly [number, number],
  days: number,
  limits: readonly [number, number],
): readonly [number, number] {
  return within([span[0] + days, span[1] + days], limits);
}

function within(
  [from, to]: readonly [number, number],
  [low, high]: readonly [number, number],
): readonly [number, number] {
  if (to - from >= high - low) return [low, high];
  if (from < low) return [low, low + to - from];
  if (to > high) return [high - (to - from), high];
  return [from, to];
}
