import { tablesOf, viewOf } from './sfnt.ts';

/**
 * The glyph of each code point that a font holds, from its `cmap` table, formats 4 and 12
 * (`iso:2019`); other formats are passed over.
 */
export function glyphsIn(font: Uint8Array): ReadonlyMap<number, number> {
  const table = tablesOf(font).get('cmap') ?? new Uint8Array(4);
  const view = viewOf(table);
  const glyphs = new Map<number, number>();
  for (let i = 0; i < view.getUint16(2); i++) {
    const part = viewOf(table.subarray(view.getUint32(4 + 8 * i + 4)));
    const format = part.getUint16(0);
    if (format === 4) addSegments(part, glyphs);
    if (format === 12) addGroups(part, glyphs);
  }
  return glyphs;
}

/** Format 4: runs of 16 bits, each with an offset to its glyphs. */
function addSegments(part: DataView, glyphs: Map<number, number>): void {
  const twice = part.getUint16(6);
  for (let i = 0; i < twice; i += 2) {
    const [end, start] = [part.getUint16(14 + i), part.getUint16(16 + twice + i)];
    const delta = part.getUint16(16 + 2 * twice + i);
    const at = 16 + 3 * twice + i;
    const offset = part.getUint16(at);
    for (let code = start; code <= end && code < 0xffff; code++) {
      const listed = offset === 0 ? code : part.getUint16(at + offset + 2 * (code - start));
      const glyph = listed === 0 ? 0 : (listed + delta) & 0xffff;
      if (glyph !== 0) glyphs.set(code, glyph);
    }
  }
}

/** Format 12: runs of 32 bits. */
function addGroups(part: DataView, glyphs: Map<number, number>): void {
  for (let i = 0; i < part.getUint32(12); i++) {
    const at = 16 + 12 * i;
    const [start, end, glyph] = [0, 4, 8].map((byte) => part.getUint32(at + byte)) as [
      number,
      number,
      number,
    ];
    for (let code = start; code <= end; code++) glyphs.set(code, glyph + code - start);
  }
}
