import type { Correction } from '../account/types.ts';
import { tellEdtf } from '../words/days.ts';
import { anchorOf, printingPage } from './addresses.ts';
import { type Html, html } from './html.ts';
import { revisionAnchor, revisionTitle } from './revisions.ts';
import type { Page, Teller } from './types.ts';

/** What readers wrote in and what came of it, newest first. */
export function correctionsPage(teller: Teller): Page {
  const { account, words } = teller;
  const list = account.corrections.map((one) => correctionHtml(one, teller));
  const main = html`<h1>${words.corrections}</h1>
${list.length === 0 ? html`<p>${words.none}</p>` : html`<ol class="corrections">${list}</ol>`}`;
  return { path: 'corrections.html', title: words.corrections, main };
}

function correctionHtml(one: Correction, teller: Teller): Html {
  const { account, words, phrases, called } = teller;
  const { heads } = words;
  const told = account.printings.some(({ id }) => id === one.about);
  const about = told
    ? html`<a href="${printingPage(one.about)}">${called(one.about)}</a>`
    : one.about;
  const received = one.received === '' ? '' : tellEdtf(phrases, one.received);
  return html`<li id="${anchorOf(`correction.${one.id}`)}"><p class="detail">${received} · ${about} · <strong>${words.states[one.state] ?? one.state}</strong>${revisionOf(one, teller)}</p>
<blockquote><p>${one.says}</p></blockquote>${one.credit !== null && html`<p class="detail">${one.credit}</p>`}
${one.answer !== '' && html`<p>${heads.answer}: ${one.answer}</p>`}</li>
`;
}

/** The revision that took it up, as far as it is published. */
function revisionOf({ revision }: Correction, teller: Teller): Html | null {
  const told = teller.ground.history.find(({ number }) => String(number) === revision);
  return told === undefined
    ? null
    : html` · <a href="revisions.html#${revisionAnchor(told)}">${revisionTitle(told, teller)}</a>`;
}
