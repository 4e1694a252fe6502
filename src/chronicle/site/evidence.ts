import type { Dispute, ToldClaim } from '../account/types.ts';
import { tellP } from '../words/numbers.ts';
import { howItCame } from '../words/slip-sentences.ts';
import { anchorOf, between, hrefOf } from './addresses.ts';
import { claimSays, valueSays } from './cells.ts';
import { type Html, html } from './html.ts';
import type { Teller } from './types.ts';

/** What each source says of a printing, how probable that is, and how it came about. */
export function evidenceHtml(
  claims: readonly ToldClaim[],
  path: string,
  teller: Teller,
): Html | null {
  if (claims.length === 0) return null;
  const { words } = teller;
  const { heads } = words;
  return html`<section aria-labelledby="evidence"><h2 id="evidence">${words.evidence}</h2>
<table class="stacks"><thead><tr><th scope="col">${heads.source}</th><th scope="col">${heads.says}</th><th scope="col">${heads.where}</th><th scope="col" class="figure">${heads.right}</th><th scope="col">${heads.how}</th></tr></thead><tbody>
${claims.map((claim) => claimRow(claim, path, teller))}</tbody></table></section>`;
}

function claimRow(claim: ToldClaim, path: string, { words, phrases, source }: Teller): Html {
  const { heads } = words;
  const href = hrefOf(between(path, 'sources.html'), `source.${claim.source}`);
  return html`<tr id="${anchorOf(claim.key)}"${claim.slip && html` class="slip"`}><th scope="row"><a href="${href}">${source(claim.source)}</a></th><td data-head="${heads.says}">${claimSays(claim, phrases)}</td><td data-head="${heads.where}">${claim.locator}${claim.quote !== null && html` <q>${claim.quote}</q>`}</td><td class="figure" data-head="${heads.right}">${tellP(phrases, claim.pRight)}</td><td data-head="${heads.how}">${claim.slip && html`<strong class="cross"><span aria-hidden="true">✕ </span>${words.slip}</strong> `}${howItCame(claim, phrases)}</td></tr>
`;
}

/** Facts that are no dates, on which sources differ. */
export function disputesHtml(
  disputes: readonly Dispute[],
  { words, phrases }: Teller,
): Html | null {
  if (disputes.length === 0) return null;
  return html`<section aria-labelledby="disputes"><h2 id="disputes">${words.disputes}</h2><dl>${disputes.map(
    ({ property, values }) =>
      html`<dt>${phrases.properties[property] ?? property}</dt>${values.map(({ value, p }) => html`<dd>${valueSays(value, words)} (${words.heads.probability} ${tellP(phrases, p)})</dd>`)}`,
  )}</dl></section>`;
}
