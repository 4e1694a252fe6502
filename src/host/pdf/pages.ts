/** A page begins with its white ground, a child of the drawing's root. */
const GROUND = /^ {4}<path class="typst-shape" fill="#ffffff"/m;
const SYMBOL = /<symbol id="([^"]+)".*?<\/symbol>/gs;

/**
 * Takes the typesetter's drawing of all pages, one beneath the other, apart into drawings of one page
 * each, with the letters that stand on it. Throws where it does not have so many pages.
 *
 * @param svg as the typesetter draws it, the pages of one size
 */
export function pagesApart(svg: string, pages: number): readonly string[] {
  const [, width, height] = /viewBox="0 0 ([\d.]+) ([\d.]+)"/.exec(svg) ?? [];
  const defs = svg.indexOf('<defs');
  const [, ...found] = svg.slice(0, defs < 0 ? undefined : defs).split(GROUND);
  if (found.length !== pages || defs < 0)
    throw new Error(`the drawing has ${found.length} pages, expected ${pages}`);
  const others = svg.slice(defs).replace(SYMBOL, '').replace('</svg>', '');
  const symbols = [...svg.slice(defs).matchAll(SYMBOL)];
  const high = Number(height) / pages;
  return found.map((body, page) => {
    const used = symbols.filter(([, id]) => body.includes(`#${id}"`)).map(([symbol]) => symbol);
    // Each ground is drawn on the first page: it is laid anew where the page stands.
    const drawn = body.slice(body.indexOf('/>') + 2);
    const top = page * high;
    const ground = `<rect y="${top}" width="${width}" height="${high}" fill="#ffffff"/>`;
    const frame = `viewBox="0 ${top} ${width} ${high}" width="${width}pt" height="${high}pt"`;
    return `<svg ${frame} xmlns="http://www.w3.org/2000/svg" xmlns:xlink="http://www.w3.org/1999/xlink">${ground}${drawn}<defs>${used.join('')}</defs>${others}</svg>`;
  });
}
