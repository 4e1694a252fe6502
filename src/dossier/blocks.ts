import { LIMITS } from './limits.ts';
import { concat, decodeTracked } from './lossless.ts';

/** Why a table cannot be read on. */
export type Stop = 'binary' | 'utf-16' | 'too-large';

/** Whole lines of a table, or a line too long to be read, or the end of reading. */
export type Block =
  | { readonly is: 'lines'; readonly text: string; readonly damaged: boolean }
  | { readonly is: 'long' }
  | { readonly is: 'stop'; readonly why: Stop };

const LF = 10;
const BLOCK = 2 ** 18;

/**
 * Cuts bytes, as they come, into blocks of whole lines and decodes them. No more is held than one
 * block or one line of the greatest length, and a longer line is skipped without being decoded.
 */
export async function* blocksOf(pieces: AsyncIterable<Uint8Array>): AsyncGenerator<Block> {
  const buffer = new LineBuffer();
  let size = 0;
  for await (const piece of pieces) {
    size += piece.length;
    if (size > LIMITS.table) {
      yield { is: 'stop', why: 'too-large' };
      return;
    }
    for (let at = 0; at < piece.length; at += BLOCK) {
      const block = buffer.take(piece.subarray(at, at + BLOCK));
      if (block !== undefined) yield block;
      if (block?.is === 'stop') return;
    }
  }
  const rest = buffer.rest();
  if (rest !== undefined) yield rest;
}

class LineBuffer {
  #held: Uint8Array[] = [];
  #size = 0;
  #skipping = false;
  #begun = false;

  take(piece: Uint8Array): Block | undefined {
    this.#hold(this.#skipping ? this.#behindLine(piece) : piece);
    return this.#size >= BLOCK ? this.#lines(false) : undefined;
  }

  rest(): Block | undefined {
    return this.#size > 0 ? this.#lines(true) : undefined;
  }

  #hold(piece: Uint8Array): void {
    if (piece.length === 0) return;
    this.#held.push(piece);
    this.#size += piece.length;
  }

  /** What follows the end of a line that is being skipped. */
  #behindLine(piece: Uint8Array): Uint8Array {
    const lineEnd = piece.indexOf(LF);
    if (lineEnd < 0) return piece.subarray(piece.length);
    this.#skipping = false;
    return piece.subarray(lineEnd + 1);
  }

  #lines(last: boolean): Block | undefined {
    let bytes = concat(this.#held);
    if (!this.#begun) {
      const why = stopOf(bytes);
      if (why !== undefined) return { is: 'stop', why };
      if (bytes[0] === 0xef && bytes[1] === 0xbb && bytes[2] === 0xbf) bytes = bytes.subarray(3);
    }
    const end = last ? bytes.length : bytes.lastIndexOf(LF) + 1;
    const tooLong = end === 0 ? bytes.length > LIMITS.row : last && isLong(bytes);
    this.#held = [];
    this.#size = 0;
    if (tooLong) {
      this.#begun = true;
      this.#skipping = true;
      return { is: 'long' };
    }
    if (end > 0) this.#begun = true;
    this.#hold(bytes.subarray(end));
    return end > 0 ? { is: 'lines', ...decodeTracked(bytes.subarray(0, end)) } : undefined;
  }
}

/** Whether the last bytes of a file are one line that is too long. */
function isLong(bytes: Uint8Array): boolean {
  return bytes.length > LIMITS.row && !bytes.includes(LF);
}

function stopOf(bytes: Uint8Array): Stop | undefined {
  const [a, b] = bytes;
  if ((a === 0xff && b === 0xfe) || (a === 0xfe && b === 0xff)) return 'utf-16';
  return bytes.subarray(0, 8192).includes(0) ? 'binary' : undefined;
}
