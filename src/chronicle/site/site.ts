import { phrasesOf } from '../words/languages.ts';
import { tellingOf } from '../words/telling.ts';
import type { Language } from '../words/types.ts';
import { correctionsPage } from './corrections.ts';
import { dataPage } from './data.ts';
import { pageHtml } from './frame.ts';
import { html } from './html.ts';
import { SITE_CSS } from './looks.ts';
import { overviewPages } from './overview.ts';
import { printingHtml } from './printing.ts';
import { revisionsPage } from './revisions.ts';
import { sourcesPage } from './sources.ts';
import { tellPages } from './traits.ts';
import type { SiteGround, Teller } from './types.ts';
import { siteWordsOf } from './words/words.ts';

/** The mark of the house: a register mark. */
const MARK =
  '<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 16 16" fill="none" stroke="#55595c"><circle cx="8" cy="8" r="4.5"/><path d="M8 0v16M0 8h16"/></svg>\n';

/**
 * The site of an account: the texts of all its files by their names, one folder a language. It needs
 * no script and asks for nothing from elsewhere; its pictures are written beside it.
 */
export function siteOf(ground: SiteGround): ReadonlyMap<string, string> {
  const pages = ground.languages.flatMap((language) => languagePages(language, ground));
  return new Map([
    ['index.html', doorHtml(ground)],
    ['site.css', SITE_CSS],
    ['mark.svg', MARK],
    ...pages,
  ]);
}

function languagePages(language: Language, ground: SiteGround): (readonly [string, string])[] {
  const telling = tellingOf(ground.account, phrasesOf(language));
  const teller: Teller = { ...telling, ground, words: siteWordsOf(language) };
  const pages = [
    ...overviewPages(teller),
    ...tellPages(teller),
    sourcesPage(teller),
    revisionsPage(teller),
    correctionsPage(teller),
    dataPage(teller),
    ...ground.account.printings.map((printing) => printingHtml(printing, teller)),
  ];
  return pages.map((page) => [`${language}/${page.path}`, pageHtml(page, teller)]);
}

/** The page that leads to the languages. */
function doorHtml({ account, languages }: SiteGround): string {
  const [main = 'en'] = languages;
  return html`<!DOCTYPE html>
<html lang="${main}">
<head>
<meta charset="utf-8">
<meta name="viewport" content="width=device-width, initial-scale=1">
<meta name="color-scheme" content="light dark">
<title>${account.subject.title}</title>
<link rel="stylesheet" href="fonts/fonts.css">
<link rel="stylesheet" href="site.css">
<link rel="icon" href="mark.svg" type="image/svg+xml">
</head>
<body>
<main class="sheet door">
<h1>${account.subject.title}</h1>
<ul>${languages.map((one) => html`<li><a href="${one}/index.html" lang="${one}" hreflang="${one}">${siteWordsOf(one).itself}</a></li>`)}</ul>
</main>
</body>
</html>
`.text;
}
