import type { ToldPrinting } from '../account/types.ts';
import { pShort, whenShort } from '../words/when.ts';
import { anchorOf, printingPage } from './addresses.ts';
import { type Html, html } from './html.ts';
import { type Axis, axisOf, laneSvg, manyLanesSvg } from './lane.ts';
import { besideHtml, inParts, type PagePart, partNames } from './parts.ts';
import { placesFor } from './places.ts';
import { inItsLanguage, storyHtml } from './story-html.ts';
import type { Page, Teller } from './types.ts';

/** Printings of a chronology on one page: a lane is 0.6 kB, and a page stays under 60 kB. */
const MOST = 50;

/**
 * The first page: the story of the card, and its printings in the order of release. Where these are
 * too many for a page, their lanes stand on pages of their own after it; their names, with lasting
 * addresses, stay on the first.
 */
export function overviewPages(teller: Teller): readonly Page[] {
  const { account, words } = teller;
  const path = 'index.html';
  const axis = axisOf(account);
  const parts = inParts(account.printings, 'chronology', () => 1, MOST, teller);
  const whole = parts.length === 1;
  const main = html`<h1>${account.subject.title}</h1>
${account.story !== null && html`<div class="story"${inItsLanguage(account)}>${storyHtml(account.story, placesFor(path, teller), account.subject.title)}</div>`}
<section aria-labelledby="chronology">
<h2 id="chronology">${words.chronology}</h2>
${whole ? lanesHtml(account.printings, axis, teller, true) : partLanes(parts, axis, teller)}
<p class="note">${whole ? words.chronologyNote : words.partsNote}</p>
${!whole && partNames(parts, teller, { level: 3, anchored: true })}</section>`;
  const first = { path, title: account.subject.title, main };
  return whole ? [first] : [first, ...parts.map((_, i) => partPage(parts, i, axis, teller))];
}

function partPage(parts: readonly PagePart[], at: number, axis: Axis, teller: Teller): Page {
  const { words } = teller;
  const { path, title, printings } = parts[at] as PagePart;
  const main = html`${besideHtml(parts, at, teller)}
<h1>${words.chronology}</h1>
<p class="detail">${title}</p>
${lanesHtml(printings, axis, teller, false)}
<p class="note">${words.chronologyNote}</p>`;
  return { path, title: `${words.chronology}, ${title}`, main, under: 'index.html' };
}

function lanesHtml(
  printings: readonly ToldPrinting[],
  axis: Axis,
  teller: Teller,
  anchored: boolean,
): Html {
  return html`<ol class="chronology">
${axisHtml(axis)}
${printings.map((printing) => laneHtml(printing, axis, teller, anchored))}
</ol>`;
}

function axisHtml({ years }: Axis): Html {
  return html`<li class="axis" aria-hidden="true"><span></span><span class="years">${years.map((year) => html`<span>${year}</span>`)}</span><span></span></li>`;
}

function laneHtml(
  { id, release }: ToldPrinting,
  axis: Axis,
  { phrases, called }: Teller,
  anchored: boolean,
): Html {
  const address = anchored && html` id="${anchorOf(`place.${id}`)}"`;
  return html`<li${address}><a href="${printingPage(id)}">${called(id)}</a>${laneSvg(release, axis)}<span class="when">${whenShort(release, phrases)} <span class="p">${pShort(release, phrases)}</span></span></li>
`;
}

/** The parts as rows of one figure, a fine line for each printing. */
function partLanes(parts: readonly PagePart[], axis: Axis, teller: Teller): Html {
  const { words } = teller;
  return html`<ol class="chronology parts">
${axisHtml(axis)}
${parts.map(
  ({ path, title, printings }) =>
    html`<li><a href="${path}">${title}</a>${manyLanesSvg(
      printings.map(({ release }) => release),
      axis,
    )}<span class="when">${words.printings(printings.length)}</span></li>
`,
)}</ol>`;
}
