import type { ToldPrinting } from '../account/types.ts';
import { pShort, whenShort } from '../words/when.ts';
import { anchorOf, printingPage } from './addresses.ts';
import { type Html, html } from './html.ts';
import { type Axis, axisOf, laneSvg } from './lane.ts';
import { placesFor } from './places.ts';
import { inItsLanguage, storyHtml } from './story-html.ts';
import type { Page, Teller } from './types.ts';

/** The first page: the story of the card, and its printings in the order of release. */
export function overviewPage(teller: Teller): Page {
  const { account, words } = teller;
  const path = 'index.html';
  const axis = axisOf(account);
  const main = html`<h1>${account.subject.title}</h1>
${account.story !== null && html`<div class="story"${inItsLanguage(account)}>${storyHtml(account.story, placesFor(path, teller), account.subject.title)}</div>`}
<section aria-labelledby="chronology">
<h2 id="chronology">${words.chronology}</h2>
<ol class="chronology">
<li class="axis" aria-hidden="true"><span></span><span class="years">${axis.years.map((year) => html`<span>${year}</span>`)}</span><span></span></li>
${account.printings.map((printing) => laneHtml(printing, axis, teller))}
</ol>
<p class="note">${words.chronologyNote}</p>
</section>`;
  return { path, title: account.subject.title, main };
}

function laneHtml({ id, release }: ToldPrinting, axis: Axis, { phrases, called }: Teller): Html {
  return html`<li id="${anchorOf(`place.${id}`)}"><a href="${printingPage(id)}">${called(id)}</a>${laneSvg(release, axis)}<span class="when">${whenShort(release, phrases)} <span class="p">${pShort(release, phrases)}</span></span></li>
`;
}
