import type { ToldSource } from '../account/types.ts';
import { tellEdtf } from '../words/days.ts';
import { anchorOf } from './addresses.ts';
import { sourceCells } from './cells.ts';
import { type Html, html } from './html.ts';
import type { Page, Teller } from './types.ts';

/** The sources with their reliability, and the bibliography. */
export function sourcesPage(teller: Teller): Page {
  const { account, words } = teller;
  const { heads } = words;
  const main = html`<h1>${words.sources}</h1>
<table class="stacks"><thead><tr><th scope="col">${heads.source}</th><th scope="col">${heads.kind}</th><th scope="col" class="figure">${heads.claims}</th><th scope="col">${words.reliability}</th><th scope="col">${heads.takenFrom}</th></tr></thead><tbody>
${account.sources.map((source) => sourceRow(source, teller))}</tbody></table>
<p class="note">${words.reliabilityNote}</p>
<section aria-labelledby="bibliography"><h2 id="bibliography">${words.bibliography}</h2>
<ul class="bibliography">${[...account.sources].sort(byTitle).map((source) => entry(source, teller))}</ul></section>`;
  return { path: 'sources.html', title: words.sources, main };
}

function byTitle(a: ToldSource, b: ToldSource): number {
  return a.title < b.title ? -1 : 1;
}

function sourceRow(told: ToldSource, teller: Teller): Html {
  const { words } = teller;
  const { heads } = words;
  const { right, from } = sourceCells(told, teller);
  return html`<tr id="${anchorOf(`source.${told.id}`)}"><th scope="row">${told.title}</th><td data-head="${heads.kind}">${words.sourceKinds[told.kind]}</td><td class="figure" data-head="${heads.claims}">${told.claims}</td><td data-head="${words.reliability}" id="${anchorOf(`accuracy.${told.id}`)}">${right}</td><td data-head="${heads.takenFrom}">${from}</td></tr>
`;
}

function entry(told: ToldSource, { words, phrases }: Teller): Html {
  const { citation, title, url, archived, accessed } = told;
  const read = accessed === null ? '' : `, ${words.accessed(tellEdtf(phrases, accessed))}`;
  return html`<li>${citation ?? title}${url !== null && html`. ${address(url, url)}`}${read}${archived !== null && html` (${address(archived, words.archived)})`}.</li>
`;
}

/** An address that a reader can follow, else as text. */
function address(url: string, words: string): Html {
  return /^https?:\/\//i.test(url) ? html`<a href="${url}">${words}</a>` : html`${words}`;
}
