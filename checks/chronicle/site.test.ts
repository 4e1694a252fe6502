import { HtmlValidate } from 'html-validate';
import { beforeAll, describe, expect, it } from 'vitest';
import {
  type Account,
  fileNameOf,
  LANGUAGES,
  type Language,
  type SitePicture,
  siteOf,
  type ToldRevision,
} from '../../src/chronicle/index.ts';
import { toldDemo } from './account.ts';
import { changedOnce, KINDS } from './history.ts';

let account: Account;
let history: readonly ToldRevision[];
let site: ReadonlyMap<string, string>;
const picture: SitePicture = { stem: 'p', sizes: [{ width: 320, height: 447 }] };

const siteFor = (told: Account, languages: readonly Language[] = LANGUAGES) =>
  siteOf({
    account: told,
    languages,
    pictures: new Map(
      told.printings.flatMap(({ pictures }) => pictures.map(({ file }) => [file, picture])),
    ),
    downloads: [{ href: 'research.zip', kind: 'research', bytes: 12_345 }],
    history,
  });

beforeAll(async () => {
  ({ account } = await toldDemo());
  history = changedOnce(account);
  site = siteFor(account);
}, 120_000);

const pages = (of: ReadonlyMap<string, string> = site) =>
  [...of].filter(([name]) => name.endsWith('.html'));

/** html-validate 10, its recommended rules and those for WCAG; the style of the source is ours. */
const validator = new HtmlValidate({
  extends: ['html-validate:recommended', 'html-validate:a11y'],
  rules: {
    'valid-id': ['error', { relaxed: true }],
    'long-title': 'off',
    'no-trailing-whitespace': 'off',
  },
});

/** Every fault of every page, with the page and what it says. */
async function faultsOf(some: ReadonlyMap<string, string>): Promise<string[]> {
  const reports = await Promise.all(
    pages(some).map(async ([name, text]) => {
      const { results } = await validator.validateString(text);
      return results.flatMap(({ messages }) =>
        messages.map(({ ruleId, message, line }) => `${name}:${line} ${ruleId}: ${message}`),
      );
    }),
  );
  return reports.flat();
}

/** Addresses in a page that lead to another file or place of the site. */
function linksOf(name: string, text: string): string[] {
  const hrefs = [...text.matchAll(/(?:href|src)="([^"]*)"/g)].map(([, href]) => href ?? '');
  return hrefs
    .filter((href) => !/^https?:/.test(href))
    .map((href) => new URL(href, `file:///${name}`).href.slice('file:///'.length));
}

/** Links that lead to no file or no place of the site. */
function brokenIn(some: ReadonlyMap<string, string>): string[] {
  const ids = new Map(
    pages(some).map(([name, text]) => [
      name,
      new Set([...text.matchAll(/ id="([^"]*)"/g)].map(([, id]) => id)),
    ]),
  );
  return pages(some).flatMap(([name, text]) =>
    linksOf(name, text).filter((link) => {
      const [file = '', place] = link.split('#');
      if (/^(pictures\/|fonts\/fonts\.css|research\.zip)/.test(file)) return false;
      if (!some.has(file)) return true;
      return place !== undefined && !ids.get(file)?.has(decodeURIComponent(place));
    }),
  );
}

describe('the site', () => {
  it('is valid HTML, with no fault of accessibility that a validator sees', async () => {
    expect(await faultsOf(site)).toEqual([]);
  });

  it('leads nowhere in vain', () => {
    expect(brokenIn(site)).toEqual([]);
    expect(brokenIn(new Map([['a.html', '<a href="b.html#c">']]))).toHaveLength(1);
  });

  it('asks for nothing from elsewhere and needs no script', () => {
    for (const [name, text] of site) {
      expect(text, name).not.toMatch(/<script|src="(https?:)?\/\/|url\(|@import/);
      expect(text, name).not.toMatch(/<link rel="(stylesheet|icon)" href="(https?:)?\//);
    }
  });

  it('has small pages: under 60 kB before pictures, with their style', () => {
    const style = Buffer.byteLength(site.get('site.css') ?? '');
    for (const [name, text] of pages())
      expect(Buffer.byteLength(text) + style, name).toBeLessThan(60_000);
  });

  it('keeps pages as small with 300 printings, and each place at its lasting address', async () => {
    const printings = Array.from({ length: 300 }, (_, i) => {
      const one = account.printings[i % account.printings.length]!;
      return i < account.printings.length ? one : { ...one, id: `${one.id}-${i}` };
    });
    const many = siteFor({ ...account, printings }, ['en', 'ja']);
    const style = Buffer.byteLength(many.get('site.css') ?? '');
    for (const [name, text] of pages(many))
      expect(Buffer.byteLength(text) + style, name).toBeLessThan(60_000);
    const first = many.get('en/index.html') ?? '';
    for (const { id } of printings) expect(first).toContain(` id="place.${id}"`);
    const some = ['index', 'chronology-2', 'tell', 'tell-2'].map((name) => `ja/${name}.html`);
    expect(await faultsOf(new Map(some.map((name) => [name, many.get(name) ?? ''])))).toEqual([]);
    const lanes = pages(many).filter(([name]) => /^en\/chronology-/.test(name));
    expect(lanes.flatMap(([, text]) => text.match(/<svg class="lane"/g) ?? [])).toHaveLength(300);
    expect(brokenIn(many)).toEqual([]);
  });

  it('has the same pages in every language, each of which leads to the others', () => {
    const names = (language: string) =>
      pages().flatMap(([name]) =>
        name.startsWith(`${language}/`) ? [name.slice(language.length)] : [],
      );
    for (const language of LANGUAGES) {
      expect(names(language)).toEqual(names('en'));
      const text = site.get(`${language}/index.html`) ?? '';
      expect(text).toContain(`<html lang="${language}">`);
      for (const other of LANGUAGES) expect(text).toContain(`hreflang="${other}"`);
    }
  });

  it('has a lasting address for every figure of a printing and every claim', () => {
    const text = pages()
      .filter(([name]) => name.startsWith('en/'))
      .map(([, page]) => page)
      .join('');
    for (const { name } of account.figures.filter(({ printing }) => printing !== null))
      expect(text, name).toContain(` id="${name.replaceAll(' ', '_')}"`);
    for (const { release } of account.printings)
      for (const { key } of release.claims) expect(text).toContain(` id="${key}"`);
  });

  it('gives every picture an alternative text made of its data', () => {
    const alts = pages().flatMap(([, text]) =>
      [...text.matchAll(/<img [^>]*alt="([^"]*)"/g)].map(([, alt]) => alt ?? ''),
    );
    expect(alts.length).toBeGreaterThan(10);
    expect(alts.every((alt) => alt.length > 10)).toBe(true);
    expect(alts).toContain('Front of English Ninefen Starter Box (wave 1), a reference');
  });

  it('comes out the same to the byte a second time', () => {
    expect([...siteFor(account)]).toEqual([...site]);
  });
});

it('shows mark-up in stories and data as text, and gives odd ids safe names', async () => {
  const [first, ...rest] = account.printings;
  if (first === undefined) throw new RangeError('the demo has printings');
  const odd = 'Ä/../“x”\u202e🐇';
  const nasty = '<script>alert(1)</script>';
  const strange = {
    ...account,
    subject: { ...account.subject, title: `${nasty} "&` },
    story: `# Odd\n\n${nasty}\n\n[a](javascript:alert) [b](source:none) [](value:none)\n\n<b>bold</b>\n`,
    printings: [{ ...first, id: odd, productTitle: nasty }, ...rest],
  };
  const made = siteFor(strange);
  expect(await faultsOf(made)).toEqual([]);
  for (const [name, text] of made) {
    expect(name).toMatch(/^[\w./-]+$/);
    expect(text).not.toContain('<script');
    expect(text).not.toContain('href="javascript');
  }
  const text = made.get('en/index.html') ?? '';
  expect(text).toContain('&lt;script&gt;alert(1)');
  expect(text).toContain('<code>source:none</code>');
  expect(text).toContain('<code>value:none</code>');
});

it('names files so that no system takes two for one or one for its own', () => {
  const ids = ['con', 'index', 'a', 'A', 'a/b', 'a_2f_b', '', 'x'.repeat(300), 'x'.repeat(301)];
  const names = ids.map(fileNameOf);
  expect(new Set(names.map((name) => name.toLowerCase())).size).toBe(ids.length);
  for (const name of names) expect(name).toMatch(/^[a-z0-9_-]{1,100}$/);
  expect(fileNameOf('gb-first')).toBe('gb-first');
});

describe('revisions', () => {
  const text = (language: string) => site.get(`${language}/revisions.html`) ?? '';

  it('are told newest first, each kind of change under its own words, in every language', () => {
    const numbers = [...text('en').matchAll(/id="revision\.(\w+)"/g)].map(([, number]) => number);
    expect(numbers).toEqual(['proof', '2', '1']);
    for (const language of LANGUAGES)
      expect([...text(language).matchAll(/<h3>/g)].length).toBeGreaterThanOrEqual(KINDS.length + 1);
    for (const words of ['Misread by the author before', 'Found to be a source’s slip'])
      expect(text('en')).toContain(`<h3>${words}</h3>`);
    expect(text('en')).toContain('1 April 2001 → 11 April 2001');
    expect(text('en')).toContain('Nothing that is shown changed.');
  });

  it('name no source that stays at home, now or then', () => {
    for (const [name, page] of pages()) expect(page, name).not.toMatch(/secret|#source\.gone/);
    expect(text('en')).toContain('2 changes to claims of sources that stay unpublished.');
  });

  it('stand on every page: the one that it is of, or that it is a proof', () => {
    for (const [name, page] of pages().filter(([one]) => one.includes('/')))
      expect(page, name).toContain('revisions.html#revision.proof"');
  });

  it('lead from a correction to the revision that took it up, and back', () => {
    expect(site.get('en/corrections.html')).toContain('href="revisions.html#revision.1"');
    expect(text('en')).toContain('href="corrections.html#correction.c-1"');
  });
});
