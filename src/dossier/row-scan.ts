const QUOTE = 34;
const COMMA = 44;
const LF = 10;
const CR = 13;

/**
 * How a row ended: `row`, well; `open`, the text ends inside quotes; `broken`, letters stand behind
 * a closing quote.
 */
export type RowEnd = 'row' | 'open' | 'broken';

/**
 * Finds the cells of one row of RFC 4180 text (`rfc4180`) at a time, without copying them. A row
 * ends with LF or CRLF, or with the text. A quote inside an unquoted cell is a letter like others.
 */
export class RowScan {
  text = '';
  /** Cells of the row. */
  count = 0;
  /** Where the row begins, where its letters end, and where the next row begins. */
  from = 0;
  end = 0;
  next = 0;
  #starts: number[] = [];
  #ends: number[] = [];
  #quoted: boolean[] = [];
  /** The first quote at or behind `#quoteSince`. */
  #quoteAt = -1;
  #quoteSince = 0;

  /** Takes another text. */
  over(text: string): this {
    this.text = text;
    this.#quoteAt = -1;
    return this;
  }

  /** Scans the row that begins at `from`. */
  scan(from: number): RowEnd {
    const { text } = this;
    this.from = from;
    this.count = 0;
    if (from > this.#quoteAt || from < this.#quoteSince) {
      const quote = text.indexOf('"', from);
      this.#quoteAt = quote < 0 ? text.length : quote;
      this.#quoteSince = from;
    }
    const lineEnd = text.indexOf('\n', from);
    const stop = lineEnd < 0 ? text.length : lineEnd;
    return this.#quoteAt < stop ? this.#scanQuoted(from) : this.#scanPlain(from, stop);
  }

  #scanPlain(from: number, stop: number): RowEnd {
    const { text } = this;
    this.#finish(stop);
    let start = from;
    for (let i = from; i < this.end; i++) {
      if (text.charCodeAt(i) !== COMMA) continue;
      this.#push(start, i, false);
      start = i + 1;
    }
    this.#push(start, this.end, false);
    return 'row';
  }

  #scanQuoted(from: number): RowEnd {
    const { text } = this;
    let i = from;
    for (;;) {
      const quoted = text.charCodeAt(i) === QUOTE;
      const start = quoted ? i + 1 : i;
      i = quoted ? this.#closing(start) : this.#plainEnd(start);
      if (i < 0) return 'open';
      this.#push(start, i, quoted);
      if (quoted) i += 1;
      if (text.charCodeAt(i) === COMMA) {
        i += 1;
        continue;
      }
      if (text.charCodeAt(i) === CR && this.#lineEndsAt(i + 1)) i += 1;
      if (this.#lineEndsAt(i)) {
        this.#finish(i);
        return 'row';
      }
      return 'broken';
    }
  }

  /** Position of the quote that closes, -1 where none does. */
  #closing(start: number): number {
    let i = this.text.indexOf('"', start);
    while (i >= 0 && this.text.charCodeAt(i + 1) === QUOTE) i = this.text.indexOf('"', i + 2);
    return i;
  }

  /** Where an unquoted cell ends: before a comma, a line end or the end of the text. */
  #plainEnd(start: number): number {
    const { text } = this;
    for (let i = start; i < text.length; i++) {
      const code = text.charCodeAt(i);
      if (code === COMMA) return i;
      if (code === LF) return i > start && text.charCodeAt(i - 1) === CR ? i - 1 : i;
    }
    return text.length;
  }

  #lineEndsAt(i: number): boolean {
    return i >= this.text.length || this.text.charCodeAt(i) === LF;
  }

  #finish(lineEnd: number): void {
    const { text } = this;
    const crlf =
      lineEnd < text.length && lineEnd > this.from && text.charCodeAt(lineEnd - 1) === CR;
    this.end = crlf ? lineEnd - 1 : lineEnd;
    this.next = Math.min(lineEnd + 1, text.length);
  }

  #push(start: number, end: number, quoted: boolean): void {
    this.#starts[this.count] = start;
    this.#ends[this.count] = end;
    this.#quoted[this.count] = quoted;
    this.count += 1;
  }

  /** Takes the row for its first line only, where quotes do not close. */
  takeLine(): void {
    const lineEnd = this.text.indexOf('\n', this.from);
    this.#finish(lineEnd < 0 ? this.text.length : lineEnd);
  }

  /** One cell as its writer meant it; empty beyond the last. */
  cell(index: number): string {
    if (index < 0 || index >= this.count) return '';
    const start = this.#starts[index]!;
    const end = this.#ends[index]!;
    if (start === end) return '';
    const cell = this.text.slice(start, end);
    return this.#quoted[index] && cell.includes('""') ? cell.replaceAll('""', '"') : cell;
  }

  /** One cell with the quotes around it, if it has some. */
  rawCell(index: number): string {
    if (index < 0 || index >= this.count) return '';
    const quote = this.#quoted[index] ? 1 : 0;
    return this.text.slice(this.#starts[index]! - quote, this.#ends[index]! + quote);
  }

  /** Whether all cells are empty. */
  get blank(): boolean {
    for (let i = 0; i < this.count; i++) if (this.#starts[i] !== this.#ends[i]) return false;
    return true;
  }

  /** All cells. */
  cells(): string[] {
    return Array.from({ length: this.count }, (_, i) => this.cell(i));
  }

  /** The row as written, without its line end. */
  get raw(): string {
    return this.text.slice(this.from, this.end);
  }
}

/** A cell as RFC 4180 writes it, in quotes only where they are needed. */
export function cellText(cell: string): string {
  const needed = /[",\r\n]/.test(cell) || cell.startsWith('\ufeff');
  return needed ? `"${cell.replaceAll('"', '""')}"` : cell;
}

/** A row without its line end. A row of one empty cell is in quotes, since a blank line is none. */
export function rowText(cells: readonly string[]): string {
  if (cells.length === 1 && cells[0] === '') return '""';
  return cells.map(cellText).join(',');
}
