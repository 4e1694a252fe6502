import { Resvg } from '@resvg/resvg-js';

/**
 * A drawing (SVG) as a PNG, `width` pixels wide, see-through where nothing is drawn. Only the fonts
 * in the given files (TTF or OTF) are used, so that the bytes are the same on every machine. Throws
 * where the drawing is no SVG.
 */
export function pngOf(svg: string, width: number, fontFiles: readonly string[]): Uint8Array {
  const drawing = new Resvg(svg, {
    fitTo: { mode: 'width', value: width },
    font: { fontFiles: [...fontFiles], loadSystemFonts: false },
  });
  return drawing.render().asPng();
}
