import { type Html, html } from './html.ts';
import type { Download, Page, Teller } from './types.ts';

/** What readers may download, each with its size. */
export function dataPage({ words, phrases, ground }: Teller): Page {
  const { data } = words;
  const downloads = ground.downloads.filter(
    ({ language = phrases.language }) => language === phrases.language,
  );
  const kilobytes = new Intl.NumberFormat(phrases.locale, {
    style: 'unit',
    unit: 'kilobyte',
    maximumSignificantDigits: 2,
  });
  const item = ({ href, bytes }: Download, title: string): Html =>
    html`<li><a href="../${href}">${title}</a> <span class="detail">${kilobytes.format(bytes / 1000)}</span></li>
`;
  const volumeOf = (one: Download): string => {
    const volumes = downloads.filter(({ kind }) => kind === one.kind);
    return volumes.length > 1 ? ` · ${volumes.indexOf(one) + 1} / ${volumes.length}` : '';
  };
  const main = html`<h1>${data.title}</h1>
<p class="note">${data.note}</p>
${downloads.length === 0 ? html`<p>${words.none}</p>` : null}<ul class="downloads">${downloads.map(
    (one) => one.kind !== 'table' && item(one, `${data.kinds[one.kind]}${volumeOf(one)}`),
  )}</ul>
${
  downloads.some(({ kind }) => kind === 'table') &&
  html`<section aria-labelledby="tables"><h2 id="tables">${data.tables}</h2><ul class="downloads">${downloads.map(
    (one) => one.kind === 'table' && item(one, one.href.split('/').at(-1) ?? one.href),
  )}</ul></section>`
}`;
  return { path: 'data.html', title: data.title, main };
}
