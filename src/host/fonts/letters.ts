import { tablesOf, viewOf } from './sfnt.ts';

/**
 * The code points for which a font has a glyph, from its `cmap` table, formats 4 and 12
 * (`iso:2019`); other formats are passed over.
 */
export function lettersIn(font: Uint8Array): ReadonlySet<number> {
  const table = tablesOf(font).get('cmap') ?? new Uint8Array(4);
  const view = viewOf(table);
  const letters = new Set<number>();
  for (let i = 0; i < view.getUint16(2); i++) {
    const part = viewOf(table.subarray(view.getUint32(4 + 8 * i + 4)));
    const format = part.getUint16(0);
    if (format === 4) addSegments(part, letters);
    if (format === 12) addGroups(part, letters);
  }
  return letters;
}

/** Format 4: runs of 16 bits, each with an offset to its glyphs. */
function addSegments(part: DataView, letters: Set<number>): void {
  const twice = part.getUint16(6);
  for (let i = 0; i < twice; i += 2) {
    const [end, start] = [part.getUint16(14 + i), part.getUint16(16 + twice + i)];
    const delta = part.getUint16(16 + 2 * twice + i);
    const at = 16 + 3 * twice + i;
    const offset = part.getUint16(at);
    for (let code = start; code <= end && code < 0xffff; code++) {
      const glyph = offset === 0 ? code : part.getUint16(at + offset + 2 * (code - start));
      if (glyph !== 0 && ((glyph + delta) & 0xffff) !== 0) letters.add(code);
    }
  }
}

/** Format 12: runs of 32 bits. */
function addGroups(part: DataView, letters: Set<number>): void {
  for (let i = 0; i < part.getUint32(12); i++) {
    const at = 16 + 12 * i;
    for (let code = part.getUint32(at); code <= part.getUint32(at + 4); code++) letters.add(code);
  }
}
