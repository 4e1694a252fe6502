/**
 * Text and bytes without loss: valid UTF-8 is decoded as such, and each byte that is no part of
 * valid UTF-8 becomes one lone low surrogate U+DC80 to U+DCFF (as in Python's PEP 383), so that
 * files with stray bytes can be edited without touching them.
 */
const strict = new TextDecoder('utf-8', { fatal: true, ignoreBOM: true });
const encoder = new TextEncoder();

const LONE = /[\udc80-\udcff]/u;

/** Whether a text holds a byte that was no UTF-8. */
export function isDamaged(text: string): boolean {
  return LONE.test(text);
}

/** A text for people: bytes that were no UTF-8 are shown as `\xE9`. */
export function readable(text: string): string {
  return text.replace(/[\udc80-\udcff]/gu, (letter) => {
    const byte = letter.charCodeAt(0) - 0xdc00;
    return `\\x${byte.toString(16).toUpperCase()}`;
  });
}

/** The text of any bytes, and whether some of them were no UTF-8. */
export function decodeTracked(bytes: Uint8Array): { text: string; damaged: boolean } {
  try {
    return { text: strict.decode(bytes), damaged: false };
  } catch {
    return { text: decodeDamaged(bytes), damaged: true };
  }
}

/** The text of any bytes; `encodeLossless` gives the very bytes back. */
export function decodeLossless(bytes: Uint8Array): string {
  return decodeTracked(bytes).text;
}

function decodeDamaged(bytes: Uint8Array): string {
  let text = '';
  let good = 0;
  let i = 0;
  while (i < bytes.length) {
    const length = sequenceLength(bytes, i);
    if (length > 0) {
      i += length;
      continue;
    }
    text += strict.decode(bytes.subarray(good, i)) + String.fromCharCode(0xdc00 + bytes[i]!);
    i += 1;
    good = i;
  }
  return text + strict.decode(bytes.subarray(good));
}

/** Length of the valid UTF-8 sequence at `i`, 0 where there is none (Unicode, table 3-7). */
function sequenceLength(bytes: Uint8Array, i: number): number {
  const lead = bytes[i]!;
  if (lead < 0x80) return 1;
  if (lead < 0xc2 || lead > 0xf4) return 0;
  const length = lead < 0xe0 ? 2 : lead < 0xf0 ? 3 : 4;
  const low = lead === 0xe0 ? 0xa0 : lead === 0xf0 ? 0x90 : 0x80;
  const high = lead === 0xed ? 0x9f : lead === 0xf4 ? 0x8f : 0xbf;
  const second = bytes[i + 1] ?? 0;
  if (second < low || second > high) return 0;
  for (let k = 2; k < length; k++) if (((bytes[i + k] ?? 0) & 0xc0) !== 0x80) return 0;
  return length;
}

/** The bytes of a text, the inverse of `decodeLossless`. */
export function encodeLossless(text: string): Uint8Array {
  if (!isDamaged(text)) return encoder.encode(text);
  const pieces = text.split(/([\udc80-\udcff]+)/u).map((piece, i) => {
    if (i % 2 === 0) return encoder.encode(piece);
    return Uint8Array.from(piece, (letter) => letter.charCodeAt(0) - 0xdc00);
  });
  return concat(pieces);
}

/** Pieces of bytes, one behind the other. */
export function concat(pieces: readonly Uint8Array[]): Uint8Array {
  if (pieces.length === 1) return pieces[0]!;
  const bytes = new Uint8Array(pieces.reduce((size, piece) => size + piece.length, 0));
  let at = 0;
  for (const piece of pieces) {
    bytes.set(piece, at);
    at += piece.length;
  }
  return bytes;
}
