/** The tables of a font file in TrueType's container, by tag. */
export type Tables = ReadonlyMap<string, Uint8Array>;

/** Sum of a whole font file, by which `checkSumAdjustment` is reckoned. */
const MAGIC = 0xb1b0afba;

/** The tables of a font file (`iso:2019`). Throws RangeError where it is cut short. */
export function tablesOf(font: Uint8Array): Tables {
  const view = viewOf(font);
  const tables = new Map<string, Uint8Array>();
  for (let i = 0; i < view.getUint16(4); i++) {
    const at = 12 + 16 * i;
    const tag = String.fromCharCode(...font.subarray(at, at + 4));
    const from = view.getUint32(at + 8);
    tables.set(tag, font.subarray(from, from + view.getUint32(at + 12)));
  }
  return tables;
}

/** A font file of tables, in the order of their tags, with its checksums. */
export function fontOf(tables: Tables): Uint8Array {
  const sorted = [...tables].sort(([a], [b]) => (a < b ? -1 : 1));
  const padded = sorted.map(([tag, bytes]) => [tag, copied(tag, bytes), bytes.length] as const);
  const head = 12 + 16 * padded.length;
  const font = new Uint8Array(padded.reduce((sum, [, { length }]) => sum + length, head));
  const view = viewOf(font);
  const power = Math.floor(Math.log2(padded.length));
  const search = 16 * 2 ** power;
  view.setUint32(0, 0x00010000);
  for (const [i, word] of [padded.length, search, power, 16 * padded.length - search].entries())
    view.setUint16(4 + 2 * i, word);
  let from = head;
  let adjustment = 0;
  for (const [i, [tag, bytes, length]] of padded.entries()) {
    const at = 12 + 16 * i;
    font.set(new TextEncoder().encode(tag), at);
    for (const [j, word] of [sumOf(bytes), from, length].entries())
      view.setUint32(at + 4 + 4 * j, word);
    font.set(bytes, from);
    if (tag === 'head') adjustment = from + 8;
    from += bytes.length;
  }
  view.setUint32(adjustment, (MAGIC - sumOf(font)) >>> 0);
  return font;
}

/** Filled up to whole words; the sum of the whole file is not counted in `head`. */
function copied(tag: string, bytes: Uint8Array): Uint8Array {
  const own = new Uint8Array(Math.ceil(bytes.length / 4) * 4);
  own.set(bytes);
  if (tag === 'head') viewOf(own).setUint32(8, 0);
  return own;
}

function sumOf(bytes: Uint8Array): number {
  const view = viewOf(bytes);
  let sum = 0;
  for (let at = 0; at < bytes.length; at += 4) sum = (sum + view.getUint32(at)) >>> 0;
  return sum;
}

/** A window on bytes that starts where they start. */
export function viewOf(bytes: Uint8Array): DataView {
  return new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
}
