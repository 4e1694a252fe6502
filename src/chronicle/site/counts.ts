import type { Count, ToldPrice, ToldPrinting } from '../account/types.ts';
import { priceName } from '../figures/figures.ts';
import { countSentences } from '../words/count-sentences.ts';
import { tellEdtf } from '../words/days.ts';
import { countInterval, shareInterval } from '../words/figures.ts';
import { tellAmount, tellCount, tellShare } from '../words/numbers.ts';
import { anchorOf } from './addresses.ts';
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

function countRow(id: string, count: Count, { phrases, service, words: { heads } }: Teller): Html {
  const { total, total95, top, rate, rate95, lumpedWith, asOf } = count;
  const lumped = lumpedWith.length > 0;
  const said = tellCount(phrases, total);
  const graded = lumped
    ? `${phrases.vague.about(said)} (${countInterval(total95, phrases)})`
    : said;
  const best =
    rate === null
      ? ''
      : `${tellCount(phrases, top)}: ${tellShare(phrases, rate)} (${shareInterval(rate95, phrases)})`;
  return html`<tr><th scope="row">${service(count.service)}</th><td class="figure" data-head="${heads.copies}" id="${anchorOf(`population.${id}.${count.service}`)}">${graded}</td><td class="figure" data-head="${heads.top}" id="${anchorOf(`top.${id}.${count.service}`)}">${best}</td><td data-head="${heads.day}">${tellEdtf(phrases, asOf)}</td></tr>
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

function priceRow(
  id: string,
  price: ToldPrice,
  { account, words, phrases, service }: Teller,
): Html {
  const money = (amount: number) => tellAmount(phrases, amount, account.currency ?? 'EUR');
  const [low, high] = price.interval80.map(money);
  const what =
    price.service === null ? words.raw : `${service(price.service)} ${price.grade ?? ''}`;
  return html`<tr id="${anchorOf(priceName(id, price))}"><th scope="row">${what}</th><td class="figure">${money(price.median)}</td><td>${phrases.interval(low ?? '', high ?? '')}</td><td class="figure">${tellCount(phrases, price.sales)}</td></tr>
`;
}
