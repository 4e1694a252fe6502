import type { Face } from './types.ts';

/** The inks of the house on paper, as the workbench has them in light. */
export const INK = {
  table: '#c9ccce',
  sheet: '#fcfcfa',
  ink: '#141617',
  second: '#55595c',
  third: '#8b9093',
  rule: '#dfe1e0',
  lane: '#f1f2f0',
  cyan: '#0086b3',
  cyanText: '#006a8f',
  magenta: '#c4006a',
  yellow: '#ffd400',
} as const;

/** How a text is set. */
export interface Type {
  readonly size: number;
  readonly face?: Face;
  readonly fill?: string;
  readonly anchor?: 'start' | 'middle' | 'end';
}

const FACES: Readonly<Record<Face, string>> = { sans: 'Archivo', serif: 'Newsreader' };

/** A text on its base line. */
export function words(x: number, y: number, text: string, type: Type): string {
  const { size, face = 'sans', fill = INK.ink, anchor = 'start' } = type;
  return `<text x="${at(x)}" y="${at(y)}" font-family="${FACES[face]}" font-size="${at(size)}" fill="${fill}" text-anchor="${anchor}">${escaped(text)}</text>`;
}

/** A filled rectangle. */
export function box(x: number, y: number, width: number, height: number, fill: string): string {
  return `<rect x="${at(x)}" y="${at(y)}" width="${at(width)}" height="${at(height)}" fill="${fill}"/>`;
}

/** A line through points. */
export function line(
  points: readonly (readonly [number, number])[],
  stroke: string,
  width: number,
): string {
  const path = points.map(([x, y], i) => `${i === 0 ? 'M' : 'L'}${at(x)} ${at(y)}`).join('');
  return `<path d="${path}" fill="none" stroke="${stroke}" stroke-width="${at(width)}"/>`;
}

/** A register mark: a circle and a cross, as printers lay inks over each other by. */
export function registerMark(x: number, y: number, size: number, stroke: string): string {
  const circle = `<circle cx="${at(x)}" cy="${at(y)}" r="${at(size * 0.58)}" fill="none" stroke="${stroke}" stroke-width="${at(size / 12)}"/>`;
  const cross = [
    line(
      [
        [x - size, y],
        [x + size, y],
      ],
      stroke,
      size / 12,
    ),
    line(
      [
        [x, y - size],
        [x, y + size],
      ],
      stroke,
      size / 12,
    ),
  ];
  return circle + cross.join('');
}

/** A whole drawing. */
export function drawing(width: number, height: number, parts: readonly string[]): string {
  return `<svg xmlns="http://www.w3.org/2000/svg" width="${width}" height="${height}" viewBox="0 0 ${width} ${height}">${parts.join('')}</svg>`;
}

/** Numbers to a tenth of a pixel, so that the same drawing has the same bytes. */
function at(value: number): string {
  return String(Math.round(value * 10) / 10);
}

/** Text with what XML would take for markup escaped, and what it does not allow left out. */
export function escaped(text: string): string {
  return text
    .replace(/[\p{Cc}\ufffe\uffff]/gu, ' ')
    .replaceAll('&', '&amp;')
    .replaceAll('<', '&lt;')
    .replaceAll('>', '&gt;')
    .replaceAll('"', '&quot;');
}
