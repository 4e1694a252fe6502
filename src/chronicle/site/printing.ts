import type { ToldPrinting } from '../account/types.ts';
import { headOf } from '../words/head.ts';
import { releaseFactsOf } from '../words/sentences.ts';
import { anchorOf, between, hrefOf, printingPage } from './addresses.ts';
import { countsHtml, pricesHtml } from './counts.ts';
import { daysHtml } from './days-figure.ts';
import { disputesHtml, evidenceHtml } from './evidence.ts';
import { type Html, html } from './html.ts';
import { picturesHtml } from './pictures.ts';
import { placesFor } from './places.ts';
import { inItsLanguage, storyHtml } from './story-html.ts';
import { kindHtml, toldApartHtml, traitsHtml } from './traits.ts';
import type { Page, Teller } from './types.ts';

/** All that is told of one printing. */
export function printingHtml(printing: ToldPrinting, teller: Teller): Page {
  const { id, story } = printing;
  const { account, words, called } = teller;
  const path = printingPage(id);
  const { title, detail } = headOf(printing, teller);
  const kinds = account.counterfeits.filter((one) => printing.counterfeits.includes(one.id));
  const main = html`${neighbours(printing, teller)}
<h1>${title}</h1>
<p class="detail">${detail}</p>
${factsHtml(printing, teller)}
${daysHtml(printing.release, teller)}
${story !== null && html`<section class="story" aria-label="${words.story}"${inItsLanguage(account)}>${storyHtml(story, placesFor(path, teller))}</section>`}
${picturesHtml(printing.pictures, called(id), path, teller, printing.traits)}
${traitsHtml(printing.traits, teller)}
${toldApartHtml(printing, teller)}
${kinds.length > 0 && html`<section aria-labelledby="unauthorised"><h2 id="unauthorised">${words.unauthorised}</h2><p class="note caution">${words.unauthorisedNote}</p>${kinds.map((kind) => kindHtml(kind, path, teller))}</section>`}
${evidenceHtml(printing.release.claims, path, teller)}
${disputesHtml(printing.disputes, teller)}
${countsHtml(printing, teller)}
${pricesHtml(printing, teller)}`;
  return { path, title: called(id), main };
}

function factsHtml(printing: ToldPrinting, teller: Teller): Html {
  const { words } = teller;
  const told = new Set<string>();
  const facts = releaseFactsOf(printing, teller);
  return html`<section aria-label="${words.facts}"><ul class="facts">${facts.map(
    ({ figure, text }) => {
      const first = figure.startsWith('release.') && !told.has(figure);
      told.add(figure);
      const id = first && html` id="${anchorOf(figure)}"`;
      return html`<li${id}>${text} <a class="address" href="${hrefOf(figure.startsWith('place.') ? between(printingPage(printing.id), 'index.html') : '', figure)}" title="${words.address}"><span aria-hidden="true">#</span><span class="unseen">${words.address}: ${figure}</span></a></li>
`;
    },
  )}</ul></section>`;
}

function neighbours({ id }: ToldPrinting, { account, words, called }: Teller): Html {
  const at = account.printings.findIndex((one) => one.id === id);
  const [before, after] = [account.printings[at - 1], account.printings[at + 1]];
  const path = printingPage(id);
  const link = (to: ToldPrinting, word: string, rel: string) =>
    html`<a rel="${rel}" href="${between(path, printingPage(to.id))}">${word}: ${called(to.id)}</a>`;
  return html`<nav class="neighbours" aria-label="${words.chronology}">${before && link(before, words.earlier, 'prev')} ${after && link(after, words.later, 'next')}</nav>`;
}
