/** Scripts and signs that a terminal draws two columns wide (Unicode Standard Annex 11). */
const WIDE =
  /[\u1100-\u115F\u2E80-\u303E\u3041-\u33FF\u3400-\u4DBF\u4E00-\u9FFF\uA000-\uA4CF\uA960-\uA97F\uAC00-\uD7A3\uF900-\uFAFF\uFE30-\uFE6F\uFF00-\uFF60\uFFE0-\uFFE6\u{1F300}-\u{1F64F}\u{1F900}-\u{1F9FF}\u{20000}-\u{3FFFD}]/u;
const EMPTY = /^[\p{Mn}\p{Me}\p{Cf}\p{Cc}\u1160-\u11FF]$/u;

/** Columns that a text takes in a terminal: wide letters two, marks on a letter none. */
export function widthOf(text: string): number {
  let width = 0;
  for (const sign of text) width += EMPTY.test(sign) ? 0 : WIDE.test(sign) ? 2 : 1;
  return width;
}

/** Fills a text up with blanks to a width; a longer one stays as it is. */
export function padded(text: string, width: number, align: 'left' | 'right' = 'left'): string {
  const blanks = ' '.repeat(Math.max(0, width - widthOf(text)));
  return align === 'left' ? text + blanks : blanks + text;
}

/** Breaks a text into lines of at most `width` columns, between words where that is possible; `%` stays with its number. */
export function wrapped(text: string, width: number): readonly string[] {
  const lines: string[] = [];
  let line = '';
  for (const word of text.split(/\s+(?!%)/).flatMap((one) => cut(one, width))) {
    const longer = line === '' ? word : `${line} ${word}`;
    if (widthOf(longer) <= width) {
      line = longer;
    } else {
      lines.push(line);
      line = word;
    }
  }
  return [...lines, line];
}

function cut(word: string, width: number): readonly string[] {
  if (widthOf(word) <= width) return [word];
  const parts: string[] = [];
  let part = '';
  for (const sign of word) {
    if (widthOf(part + sign) > width) {
      parts.push(part);
      part = '';
    }
    part += sign;
  }
  return [...parts, part];
}
