import type { ToldApart, ToldCounterfeit, ToldPrinting, ToldTrait } from '../account/types.ts';
import { tellEdtf } from '../words/days.ts';
import { between, printingPage } from './addresses.ts';
import { traitSays, valueSays } from './cells.ts';
import { type Html, html } from './html.ts';
import { besideHtml, inParts, type PagePart, partNames } from './parts.ts';
import { picturesHtml } from './pictures.ts';
import type { Page, Teller } from './types.ts';

/** The traits of a printing that may be published. */
export function traitsHtml(traits: readonly ToldTrait[], teller: Teller): Html | null {
  if (traits.length === 0) return null;
  const { words } = teller;
  return html`<section aria-labelledby="traits"><h2 id="traits">${words.traits}</h2>${traitTable(traits, teller)}<p class="note caution">${words.touchNote}</p></section>`;
}

function traitTable(traits: readonly ToldTrait[], { words, phrases }: Teller): Html {
  const { heads } = words;
  return html`<table><thead><tr><th scope="col">${heads.trait}</th><th scope="col">${heads.value}</th><th scope="col">${heads.look}</th></tr></thead><tbody>
${traits.map(({ trait, value, sees }) => html`<tr><th scope="row">${traitSays(trait, phrases)}</th><td>${valueSays(value, words)}</td><td>${words.looks[sees ?? ''] ?? ''}</td></tr>\n`)}</tbody></table>`;
}

/** How a printing is told from those most like it. */
export function toldApartHtml({ told }: ToldPrinting, teller: Teller): Html | null {
  if (told.length === 0) return null;
  return html`<section aria-labelledby="apart"><h2 id="apart">${teller.words.tell}</h2>${told.map((one) => apartHtml(one, teller))}</section>`;
}

function apartHtml({ other, by }: ToldApart, { words, phrases, called }: Teller): Html {
  const { heads } = words;
  if (by.length === 0) return html`<p>${words.toldAlike(called(other))}</p>`;
  return html`<table><caption>${words.toldFrom(called(other))}</caption><thead><tr><th scope="col">${heads.trait}</th><th scope="col">${heads.here}</th><th scope="col">${heads.there}</th><th scope="col">${heads.look}</th></tr></thead><tbody>
${by.map(({ trait, here, there, sees }) => html`<tr><th scope="row">${traitSays(trait, phrases)}</th><td>${valueSays(here, words)}</td><td>${valueSays(there, words)}</td><td>${words.looks[sees ?? ''] ?? ''}</td></tr>\n`)}</tbody></table>`;
}

/** A known kind of unauthorised or altered copy, with the traits that may be published. */
export function kindHtml(kind: ToldCounterfeit, path: string, teller: Teller): Html {
  const { words, phrases, called } = teller;
  const since = kind.knownSince === '' ? '' : words.knownSince(tellEdtf(phrases, kind.knownSince));
  const of = kind.printings.map(
    (id) => html`<a href="${between(path, printingPage(id))}">${called(id)}</a>`,
  );
  return html`<div class="kind"><p><strong>${words.kinds[kind.kind]}</strong>${since !== '' && `, ${since}`}: ${of.flatMap((link, i) => (i === 0 ? [link] : [', ', link]))}. ${kind.note}</p>${kind.traits.length > 0 && traitTable(kind.traits, teller)}${picturesHtml(kind.pictures, words.kinds[kind.kind], path, teller, kind.traits)}</div>`;
}

/** Rows of traits on one page, a table's head taken for three: a page stays under 60 kB. */
const MOST = 300;

/**
 * The page on how printings, counterfeits and alterations are told; where printings with traits are
 * too many for it, their tables stand on pages of their own after it.
 */
export function tellPages(teller: Teller): readonly Page[] {
  const { account, words } = teller;
  const path = 'tell.html';
  const told = account.printings.filter(({ traits }) => traits.length > 0);
  const parts = inParts(told, 'tell', ({ traits }) => 3 + traits.length, MOST, teller);
  const whole = parts.length === 1;
  const main = html`<h1>${words.tell}</h1>
<p class="note caution">${words.touchNote}</p>
${whole ? tablesHtml(told, teller) : partNames(parts, teller, { level: 2, anchored: false })}
<section aria-labelledby="unauthorised"><h2 id="unauthorised">${words.unauthorised}</h2><p class="note caution">${words.unauthorisedNote}</p>
${account.counterfeits.length === 0 && html`<p>${words.none}</p>`}${account.counterfeits.map((kind) => kindHtml(kind, path, teller))}</section>`;
  const first = { path, title: words.tell, main };
  return whole ? [first] : [first, ...parts.map((_, i) => partPage(parts, i, teller))];
}

function partPage(parts: readonly PagePart[], at: number, teller: Teller): Page {
  const { words } = teller;
  const { path, title, printings } = parts[at] as PagePart;
  const main = html`${besideHtml(parts, at, teller)}
<h1>${words.tell}</h1>
<p class="detail">${title}</p>
<p class="note caution">${words.touchNote}</p>
${tablesHtml(printings, teller)}`;
  return { path, title: `${words.tell}, ${title}`, main, under: 'tell.html' };
}

function tablesHtml(printings: readonly ToldPrinting[], teller: Teller): readonly Html[] {
  return printings.map(
    ({ id, traits }) =>
      html`<section><h2><a href="${printingPage(id)}">${teller.called(id)}</a></h2>${traitTable(traits, teller)}</section>\n`,
  );
}
