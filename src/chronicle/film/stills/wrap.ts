import { type Type, words } from './svg.ts';
import type { Face, Measure } from './types.ts';

/** A text in lines no wider than told; a word that is wider is broken. At most so many lines, the last cut short. */
export function wrapped(
  text: string,
  width: number,
  { size, face = 'sans' }: Type,
  measure: Measure,
  most = 99,
): readonly string[] {
  const lines: string[] = [];
  let line = '';
  for (const piece of piecesOf(text)) {
    if (measure((line + piece).trim(), face, size) <= width) {
      line += piece;
      continue;
    }
    if (line.trim() !== '') lines.push(line.trim());
    line = '';
    for (const letter of piece) {
      if (measure(line + letter, face, size) > width && line !== '') {
        lines.push(line);
        line = '';
      }
      line += letter;
    }
  }
  if (line.trim() !== '') lines.push(line.trim());
  if (lines.length <= most) return lines;
  return [
    ...lines.slice(0, most - 1),
    fitted(lines.slice(most - 1).join(' '), width, { size, face }, measure),
  ];
}

/** Words with the space after them; letters of Japanese each alone. */
function piecesOf(text: string): readonly string[] {
  return (
    text.match(
      /[\u3000-\u9fff\uff00-\uff60][、。」）]*|[^\s\u3000-\u9fff\uff00-\uff60]+\s*|\s+/g,
    ) ?? []
  );
}

/** A text cut short to a width, with an ellipsis where it was. */
export function fitted(
  text: string,
  width: number,
  { size, face = 'sans' }: Type,
  measure: Measure,
): string {
  if (measure(text, face, size) <= width) return text;
  let short = [...text];
  while (short.length > 1 && measure(`${short.join('').trim()}…`, face, size) > width)
    short = short.slice(0, -1);
  return `${short.join('').trim()}…`;
}

/** Lines of text below each other, the first on the base line `y`. */
export function paragraph(
  x: number,
  y: number,
  lines: readonly string[],
  type: Type,
  leading = 1.3,
): string {
  return lines.map((line, i) => words(x, y + i * type.size * leading, line, type)).join('');
}

/** The largest of some sizes at which a text stands on so many lines. */
export function sizeFor(
  text: string,
  width: number,
  face: Face,
  sizes: readonly number[],
  most: number,
  measure: Measure,
): number {
  return (
    sizes.find((size) => wrapped(text, width, { size, face }, measure).length <= most) ??
    sizes.at(-1)!
  );
}
