/** A line of notes without its bullet or quotation marks. */
export interface RawLine {
  /** From 1. */
  readonly line: number;
  readonly raw: string;
  readonly body: string;
  /** Columns of white space before the bullet or the text; a tab counts as four. */
  readonly indent: number;
  readonly bullet: boolean;
}

/** Of a longer line only the first part is read. */
export const LONGEST_LINE = 8_000;

const BULLET = /^(?:[-*•·‣▪◦○●■□▸►»→+~–—]|\d{1,2}\)|\[[ xX]?\]|☐|☑|✓|✔)\s+/u;

/** Cuts a text into its lines; CRLF, LF and CR all end one. */
export function linesOf(text: string): RawLine[] {
  return text
    .replace(/^\uFEFF/u, '')
    .split(/\r\n|\n|\r/u)
    .map((raw, index) => {
      const short = raw.length > LONGEST_LINE ? raw.slice(0, LONGEST_LINE) : raw;
      const white = /^[\s>]*/u.exec(short)?.[0] ?? '';
      const indent = [...white].reduce((sum, sign) => sum + (sign === '\t' ? 4 : 1), 0);
      let body = short.slice(white.length).trimEnd();
      const bullet = BULLET.exec(body);
      if (bullet) body = body.slice(bullet[0].length).replace(/^\[[ xX]?\]\s+/u, '');
      return { line: index + 1, raw, body: body.normalize('NFC'), indent, bullet: bullet !== null };
    });
}

/** A line that only draws a rule. */
export function isRule(body: string): boolean {
  return body.length >= 2 && /^[-=_*~+#|:.\s]+$/u.test(body) && !/\d/u.test(body);
}

/** The words of a heading and its level, or `undefined` where the line's own form makes none. */
export function headingForm(body: string): { words: string; level: number } | undefined {
  const hashes = /^(#{1,6})\s+(.*?)\s*#*$/u.exec(body);
  if (hashes) return { words: hashes[2]!, level: hashes[1]!.length };
  const equals = /^(={1,6})\s*([^=].*?)\s*=*$/u.exec(body);
  if (equals && body.endsWith('=')) return { words: equals[2]!, level: equals[1]!.length };
  const dashes =
    /^(?:-{2,}|\*{3,}|_{3,}|~{2,}|>{2,}|—{2,})\s*([^-*_~>].*?)\s*(?:-{2,}|\*{3,}|_{3,}|~{2,}|<{2,}|—{2,})$/u.exec(
      body,
    );
  if (dashes) return { words: dashes[1]!, level: 3 };
  const bold = /^(?:\*\*|__)([^*_]+)(?:\*\*|__):?$/u.exec(body);
  if (bold) return { words: bold[1]!, level: 4 };
  const bracket = /^[[【<]([^\][【】<>]+)[\]】>]:?$/u.exec(body);
  if (bracket) return { words: bracket[1]!, level: 4 };
  return undefined;
}
