import type { PointMm } from '../../bench/index.ts';

/** The proof sheet's inks: black is held true, cyan is a measurement, magenta a mark on the copy. */
export const INK = '#1a1a1a';
export const CYAN = '#007da5';
export const MAGENTA = '#c2187a';
export const PAPER = '#fbfaf7';

/** A thin line through points. */
export function path(points: readonly PointMm[], colour: string, closed = false): string {
  const places = points.map(([x, y]) => `${x.toFixed(3)} ${y.toFixed(3)}`).join(' L ');
  return `<path d="M ${places}${closed ? ' Z' : ''}" fill="none" stroke="${colour}" stroke-width="0.2"/>`;
}

/** Words at a place. */
export function text(
  [x, y]: PointMm,
  words: string,
  colour: string,
  anchor: 'start' | 'middle' | 'end' = 'middle',
): string {
  return `<text x="${x.toFixed(2)}" y="${y.toFixed(2)}" fill="${colour}" text-anchor="${anchor}">${escaped(words)}</text>`;
}

function escaped(words: string): string {
  return words.replaceAll('&', '&amp;').replaceAll('<', '&lt;').replaceAll('>', '&gt;');
}
