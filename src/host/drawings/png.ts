import { renderAsync } from '@resvg/resvg-js';

/**
 * A drawing (SVG) as a PNG, `width` pixels wide, see-through where nothing is drawn. Only the fonts
 * in the given files (TTF or OTF) are used, so that the bytes are the same on every machine. Several
 * at once are drawn side by side. Rejects where the drawing is no SVG.
 */
export async function pngOf(
  svg: string,
  width: number,
  fontFiles: readonly string[],
): Promise<Uint8Array> {
  const drawing = await renderAsync(svg, {
    fitTo: { mode: 'width', value: width },
    font: { fontFiles: [...fontFiles], loadSystemFonts: false },
  });
  return drawing.asPng();
}
