import { civilOf, dayFrom } from '../../evidence/index.ts';
import type { ToldPrinting } from '../account/types.ts';
import { anchorOf, printingPage } from './addresses.ts';
import { type Html, html } from './html.ts';
import type { Teller } from './types.ts';

/** Printings that follow each other and stand on one page of several. */
export interface PagePart {
  readonly path: string;
  /** Its place among the parts, with the years of its best days; `Part 2 of 6: 1996–1999`. */
  readonly title: string;
  readonly printings: readonly ToldPrinting[];
}

/**
 * Cuts printings, in their order, into parts of which no page gets too large; one part where they
 * fit one page. The cut is the same in every language.
 *
 * @param page of the parts, `chronology` for `chronology-1.html`
 * @param weightOf room that a printing takes, in any unit; `most` is that of a page
 */
export function inParts(
  printings: readonly ToldPrinting[],
  page: string,
  weightOf: (printing: ToldPrinting) => number,
  most: number,
  { words }: Teller,
): readonly PagePart[] {
  const parts: ToldPrinting[][] = [[]];
  let weight = 0;
  for (const printing of printings) {
    weight += weightOf(printing);
    if (weight > most && parts.at(-1)?.length !== 0) {
      parts.push([]);
      weight = weightOf(printing);
    }
    parts.at(-1)?.push(printing);
  }
  return parts.map((own, i) => ({
    path: `${page}-${i + 1}.html`,
    title: words.part(i + 1, parts.length, ...yearsOf(own)),
    printings: own,
  }));
}

function yearsOf(printings: readonly ToldPrinting[]): readonly [number, number] | readonly [] {
  const years = printings.flatMap(({ release: { best } }) =>
    best === null ? [] : [civilOf(dayFrom(best)).year],
  );
  return years.length === 0 ? [] : [Math.min(...years), Math.max(...years)];
}

/**
 * The names of the printings of each part, beneath the way to its page.
 *
 * @param anchored whether the lasting addresses of their places stand here
 */
export function partNames(
  parts: readonly PagePart[],
  { called }: Teller,
  { level, anchored }: { readonly level: 2 | 3; readonly anchored: boolean },
): Html {
  const id = (printing: ToldPrinting) =>
    anchored && html` id="${anchorOf(`place.${printing.id}`)}"`;
  return html`${parts.map(
    ({ path, title, printings }) => html`<h${level}><a href="${path}">${title}</a></h${level}>
<ol class="names">${printings.map((one) => html`<li${id(one)}><a href="${printingPage(one.id)}">${called(one.id)}</a></li>`)}</ol>
`,
  )}`;
}

/** The way from the page of a part to those beside it. */
export function besideHtml(parts: readonly PagePart[], at: number, { words }: Teller): Html {
  const link = (part: PagePart | undefined, word: string, rel: string) =>
    part && html`<a rel="${rel}" href="${part.path}">${word}: ${part.title}</a>`;
  return html`<nav class="neighbours" aria-label="${words.parts}">${link(parts[at - 1], words.earlier, 'prev')} ${link(parts[at + 1], words.later, 'next')}</nav>`;
}
