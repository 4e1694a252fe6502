import type { ClaimChange, ToldChange, ToldRevision } from '../revisions/types.ts';
import { tellDay, tellEdtf } from '../words/days.ts';
import { hrefOf, printingPage } from './addresses.ts';
import type { Filling } from './cells.ts';
import { type Html, html } from './html.ts';
import { movedHtml } from './moved.ts';
import type { Page, Teller } from './types.ts';

/** What changed from one published state to the next and why, newest first. */
export function revisionsPage(teller: Teller): Page {
  const { words, ground } = teller;
  const { history } = words;
  const main = html`<h1>${history.title}</h1>
<p class="note">${history.note}</p>
${ground.history.length === 0 && html`<p>${words.none}</p>`}${ground.history.map((one) => revisionHtml(one, teller))}`;
  return { path: 'revisions.html', title: history.title, main };
}

/** `revision.2`; `revision.proof` for a state that is not frozen. */
export function revisionAnchor({ number }: Pick<ToldRevision, 'number'>): string {
  return `revision.${number ?? 'proof'}`;
}

/** What a revision is called, with its day. */
export function revisionTitle({ number, day }: ToldRevision, { words, phrases }: Filling): string {
  const { revision, proof } = words.history;
  const when = tellDay(phrases, day);
  return number === null ? proof(when) : revision(number, when);
}

function revisionHtml(revision: ToldRevision, teller: Teller): Html {
  const { history } = teller.words;
  const { change, madeWith, sha512 } = revision;
  return html`<section class="revision" id="${revisionAnchor(revision)}"><h2>${revisionTitle(revision, teller)}</h2>
<p class="detail">SHA-512 <code title="${sha512}">${sha512.slice(0, 16)}…</code> · ${history.madeWith(madeWith)}</p>
${change === null ? html`<p>${history.first}</p>` : changeHtml(change, teller)}${takenUp(revision, teller)}</section>
`;
}

/** Kinds of change, in the order in which readers are told of them. */
const KINDS = ['slip', 'no-slip', 'misread', 'new', 'withdrawn', 'place'] as const;

function changeHtml(change: ToldChange, teller: Teller): Html {
  const { history } = teller.words;
  const { claims, figures, withheld } = change;
  const kinds = KINDS.flatMap((what) => {
    const changed = claims.filter((claim) => claim.what === what);
    if (changed.length === 0) return [];
    return html`<h3>${history.claims[what]}</h3><ul class="changes">${changed.map((claim) => claimHtml(claim, teller))}</ul>
`;
  });
  const nothing = claims.length + figures.length + withheld === 0;
  return html`${nothing && html`<p>${history.nothing}</p>`}${kinds}${withheld > 0 && html`<p class="note">${history.withheld(withheld)}</p>`}${movedHtml(figures, teller)}`;
}

function claimHtml({ before, after }: ClaimChange, teller: Teller): Html | null {
  const { words, phrases, source } = teller;
  const one = after ?? before;
  if (one === null) return null;
  const values = [before, after].flatMap((claim) =>
    claim === null ? [] : tellEdtf(phrases, claim.value),
  );
  const href = hrefOf('sources.html', `source.${one.source}`);
  const says = `${phrases.properties[one.property] ?? one.property} ${[...new Set(values)].join(' → ')}`;
  const where = [before?.locator, after?.locator].filter((place) => place);
  return html`<li><a href="${href}">${source(one.source)}</a>: ${aboutHtml(one.about, teller)}, ${says}${where.length > 0 && html` <span class="detail">(${words.heads.where}: ${[...new Set(where)].join(' → ')})</span>`}</li>
`;
}

/** Printings with `|` between them, as links; else a product as it is written. */
function aboutHtml(about: string, { account, called }: Teller): Html {
  const told = new Set(account.printings.map(({ id }) => id));
  const names = about
    .split('|')
    .map((id) => (told.has(id) ? html`<a href="${printingPage(id)}">${called(id)}</a>` : id));
  return html`${names.flatMap((name, i) => (i === 0 ? [name] : [' / ', name]))}`;
}

/** Readers' corrections that a revision took up. */
function takenUp({ number }: ToldRevision, { account, words, called }: Teller): Html | null {
  const taken = account.corrections.filter(({ revision }) => revision === String(number));
  if (taken.length === 0) return null;
  return html`<h3>${words.history.takenUp}</h3><ul class="changes">${taken.map(
    ({ id, about, state }) =>
      html`<li><a href="${hrefOf('corrections.html', `correction.${id}`)}">${called(about) || id}</a>: ${words.states[state] ?? state}</li>`,
  )}</ul>`;
}
