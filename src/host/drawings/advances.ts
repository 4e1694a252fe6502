import { glyphsIn } from '../fonts/glyphs.ts';
import { tablesOf, viewOf } from '../fonts/sfnt.ts';

/**
 * Widths of texts in fonts of which each letter is taken from the first that holds it, in parts of
 * the type's size, from the fonts' `hmtx` tables (`iso:2019`). A letter that none holds is as wide
 * as the type is high. Kerning is not counted.
 */
export function advancesOf(fonts: readonly Uint8Array[]): (text: string) => number {
  const widths = new Map<number, number>();
  for (const font of [...fonts].reverse()) {
    const tables = tablesOf(font);
    const wide = tables.get('hmtx');
    const head = tables.get('head');
    const across = tables.get('hhea');
    if (!wide || !head || !across) continue;
    const unit = viewOf(head).getUint16(18);
    const last = viewOf(across).getUint16(34) - 1;
    const view = viewOf(wide);
    for (const [code, glyph] of glyphsIn(font)) {
      widths.set(code, view.getUint16(4 * Math.min(glyph, last)) / unit);
    }
  }
  return (text) =>
    [...text].reduce((sum, letter) => sum + (widths.get(letter.codePointAt(0)!) ?? 1), 0);
}
