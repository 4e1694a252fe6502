import { tellDay } from '../words/days.ts';
import { between, hrefOf } from './addresses.ts';
import { type Html, html } from './html.ts';
import { revisionAnchor, revisionTitle } from './revisions.ts';
import type { Page, Teller } from './types.ts';
import { siteWordsOf } from './words/words.ts';

/** The pages that every page leads to. */
export const SCREENS = [
  'index.html',
  'tell.html',
  'sources.html',
  'revisions.html',
  'corrections.html',
  'data.html',
] as const;

/** A whole page: what is around every text of the site, and the text. */
export function pageHtml(page: Page, teller: Teller): string {
  const { words, phrases, account, ground } = teller;
  const { path, title, main } = page;
  const root = '../'.repeat(path.split('/').length);
  const whole = path === 'index.html' ? title : `${title} · ${account.subject.title}`;
  return html`<!DOCTYPE html>
<html lang="${phrases.language}">
<head>
<meta charset="utf-8">
<meta name="viewport" content="width=device-width, initial-scale=1">
<meta name="color-scheme" content="light dark">
<title>${whole}</title>
<link rel="stylesheet" href="${root}fonts/fonts.css">
<link rel="stylesheet" href="${root}site.css">
<link rel="icon" href="${root}mark.svg" type="image/svg+xml">
${ground.languages.map(
  (one) => html`<link rel="alternate" hreflang="${one}" href="${root}${one}/${path}">\n`,
)}${ground.downloads
  .filter(({ kind }) => kind === 'feed')
  .map(
    ({ href }) =>
      html`<link rel="alternate" type="application/atom+xml" title="${words.data.kinds.feed}" href="${root}${href}">\n`,
  )}</head>
<body>
<a class="skip" href="#text">${words.skip}</a>
<header class="frame">
<p class="wordmark">${account.subject.title}</p>
${navigation(page, teller)}
${languageLinks(path, root, teller)}
</header>
<main id="text" class="sheet">
<svg class="register" viewBox="0 0 16 16" aria-hidden="true" focusable="false"><circle cx="8" cy="8" r="4.5"/><path d="M8 0v16M0 8h16"/></svg>
${main}
</main>
<footer>
<p>${[account.subject.title, account.asOf !== null && `, ${words.asOf(tellDay(phrases, account.asOf))}`]}.${revisionLink(path, teller)}</p>
${account.withheldClaims > 0 && html`<p>${words.withheld(account.withheldClaims)}</p>`}
</footer>
</body>
</html>
`.text;
}

function navigation({ path, under }: Page, { words }: Teller): Html {
  const names = [
    words.overview,
    words.tell,
    words.sources,
    words.history.title,
    words.corrections,
    words.data.title,
  ];
  return html`<nav class="screens" aria-label="${words.overview}"><ul>${SCREENS.map(
    (screen, i) =>
      html`<li><a href="${between(path, screen)}"${path === screen && html` aria-current="page"`}${under === screen && html` aria-current="true"`}>${names[i] ?? ''}</a></li>`,
  )}</ul></nav>`;
}

/** Which revision a page is of, with the way to what changed. */
function revisionLink(path: string, teller: Teller): Html | null {
  const [revision] = teller.ground.history;
  if (revision === undefined) return null;
  const href = hrefOf(between(path, 'revisions.html'), revisionAnchor(revision));
  return html` <a href="${href}">${revisionTitle(revision, teller)}</a>.`;
}

function languageLinks(
  path: string,
  root: string,
  { words, phrases, ground }: Teller,
): Html | null {
  if (ground.languages.length < 2) return null;
  return html`<nav class="languages" aria-label="${words.languages}"><ul>${ground.languages.map(
    (one) =>
      html`<li><a href="${root}${one}/${path}" lang="${one}" hreflang="${one}"${one === phrases.language && html` aria-current="true"`}>${siteWordsOf(one).itself}</a></li>`,
  )}</ul></nav>`;
}
