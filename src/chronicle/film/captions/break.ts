import { LINE_LENGTHS, widthOf } from './limits.ts';

/** Lines that a caption has at most (`bbc:2018`). */
const LINES = 2;

/**
 * A sentence as captions of at most two lines, none longer than the language's line: the fewest
 * that hold it, each about as long as the others, broken where the sentence takes a breath if that
 * is near. A word longer than a line stands alone on it.
 */
export function brokenText(text: string, language: string): readonly (readonly string[])[] {
  const line = LINE_LENGTHS[language.split('-')[0] ?? ''] ?? LINE_LENGTHS.en!;
  const pieces = piecesOf(text, language);
  const most = line * LINES * 0.92;
  const wanted = Math.ceil(widthOf(pieces.join('')) / most);
  return evenly(pieces, wanted, most).flatMap((part) => {
    const lines = evenly(part, widthOf(part.join('').trim()) > line ? LINES : 1, line);
    const texts = lines.map((words) => words.join('').trim());
    return pairs(texts.filter((one) => one !== ''));
  });
}

/** What may not be broken, each with the space after it: words, or letters where there are no spaces. */
function piecesOf(text: string, language: string): readonly string[] {
  if (!language.startsWith('ja')) return text.match(/\S+\s*/g) ?? [];
  return text.match(/[\p{Script=Latin}\d.,%-]+\s*|[\s\S](?:[、。」）!?ー・]\s*)*/gu) ?? [];
}

/** Pieces in so many parts of about one length, more where a part would be wider than it may be. */
function evenly(pieces: readonly string[], parts: number, most: number): string[][] {
  const found: string[][] = [];
  let rest = [...pieces];
  for (let left = Math.max(1, parts); rest.length > 0; left = Math.max(1, left - 1)) {
    const target = widthOf(rest.join('').trim()) / left;
    const count = left === 1 && target <= most ? rest.length : breakAt(rest, target, most);
    found.push(rest.slice(0, count));
    rest = rest.slice(count);
  }
  return found;
}

/** How many pieces go first: about `target` wide, and rather up to a breath. */
function breakAt(pieces: readonly string[], target: number, most: number): number {
  let best = 1;
  let least = Number.POSITIVE_INFINITY;
  for (let count = 1; count <= pieces.length; count++) {
    const width = widthOf(pieces.slice(0, count).join('').trim());
    if (width > most) break;
    const breath = /[,;:.!?、。—–]\s*$/.test(pieces[count - 1]!) ? 0.25 * target : 0;
    const off = Math.abs(width - target) - breath;
    if (off < least) [best, least] = [count, off];
  }
  return best;
}

function pairs(lines: readonly string[]): string[][] {
  const found: string[][] = [];
  for (let i = 0; i < lines.length; i += LINES) found.push([...lines.slice(i, i + LINES)]);
  return found;
}
