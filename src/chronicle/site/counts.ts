import type { Count, ToldPrice, ToldPrinting } from '../account/types.ts';
import { priceName } from '../figures/figures.ts';
import { countSentences } from '../words/count-sentences.ts';
import { anchorOf } from './addresses.ts';
import { countCells, priceCells } from './cells.ts';
import { type Html, html } from './html.ts';
import type { Teller } from './types.ts';

/** What the services have counted, each with its day and interval. */
export function countsHtml(printing: ToldPrinting, teller: Teller): Html | null {
  const { words } = teller;
  const { heads } = words;
  const { id, counts } = printing;
  if (counts.length === 0) return null;
  const extant = countSentences(printing, teller).find(({ figure }) => figure === `extant.${id}`);
  return html`<section aria-labelledby="graded"><h2 id="graded">${words.graded}</h2>
<table class="stacks"><thead><tr><th scope="col">${heads.service}</th><th scope="col" class="figure">${heads.copies}</th><th scope="col" class="figure">${heads.top}</th><th scope="col">${heads.day}</th></tr></thead><tbody>
${counts.map((count) => countRow(id, count, teller))}</tbody></table>
${extant && html`<p id="${anchorOf(extant.figure)}">${extant.text}</p>`}
<p class="note">${words.gradedNote}</p></section>`;
}

function countRow(id: string, count: Count, teller: Teller): Html {
  const { service, words } = teller;
  const { heads } = words;
  const { graded, best, day } = countCells(count, teller);
  return html`<tr><th scope="row">${service(count.service)}</th><td class="figure" data-head="${heads.copies}" id="${anchorOf(`population.${id}.${count.service}`)}">${graded}</td><td class="figure" data-head="${heads.top}" id="${anchorOf(`top.${id}.${count.service}`)}">${best}</td><td data-head="${heads.day}">${day}</td></tr>
`;
}

/** What the next copy sold may fetch, where the collector wants that shown. */
export function pricesHtml({ id, prices }: ToldPrinting, teller: Teller): Html | null {
  const { words } = teller;
  const { heads } = words;
  if (prices.length === 0) return null;
  return html`<section aria-labelledby="prices"><h2 id="prices">${words.prices}</h2>
<table><thead><tr><th scope="col">${heads.grade}</th><th scope="col" class="figure">${heads.price}</th><th scope="col">${heads.eightOfTen}</th><th scope="col" class="figure">${heads.sales}</th></tr></thead><tbody>
${prices.map((price) => priceRow(id, price, teller))}</tbody></table>
<p class="note">${words.pricesNote}</p></section>`;
}

function priceRow(id: string, price: ToldPrice, teller: Teller): Html {
  const { what, next, interval, sales } = priceCells(price, teller);
  return html`<tr id="${anchorOf(priceName(id, price))}"><th scope="row">${what}</th><td class="figure">${next}</td><td>${interval}</td><td class="figure">${sales}</td></tr>
`;
}
