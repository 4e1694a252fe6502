import { expect, it } from 'vitest';
import { siteFonts } from './fonts.ts';
import { makerInto } from './made.ts';
import type { Files } from './told.ts';
import { shelfOf } from './told.ts';

/** Code points that the rules of a style sheet say a family holds. */
function heldBy(sheet: string, family: string): Set<number> {
  const rules = [...sheet.matchAll(/font-family:"([^"]*)".*unicode-range:([^}]*)/g)];
  const ranges = rules.flatMap(([, called, text]) => (called === family ? text?.split(',') : []));
  return new Set(
    ranges.flatMap((range = '') => {
      const [from = 0, to = from] = range
        .slice(2)
        .split('-')
        .map((hex) => Number.parseInt(hex, 16));
      return Array.from({ length: to - from + 1 }, (_, i) => from + i);
    }),
  );
}

it('gives a site fonts for all its letters, beside it, with their licences', async () => {
  const files: Files = new Map();
  await siteFonts(await makerInto(shelfOf(files), null), ['<p>Verão – 訂正</p>', '<p>개정 2</p>']);
  const sheet = String(files.get('fonts/fonts.css'));
  const urls = [...sheet.matchAll(/url\(([^)]*)\)/g)].map(([, url]) => url ?? '');
  expect(urls.length).toBeGreaterThan(4);
  for (const url of urls) {
    expect(url).toMatch(/^[a-z0-9-]+\.woff2$/);
    // The signature of WOFF 2 (W3C, WOFF File Format 2.0, section 4.1).
    expect(Buffer.from(files.get(`fonts/${url}`) as Uint8Array).toString('latin1', 0, 4)).toBe(
      'wOF2',
    );
  }
  const held = (family: string, text: string) =>
    [...text]
      .filter((letter) => heldBy(sheet, family).has(letter.codePointAt(0) as number))
      .join('');
  expect(held('Archivo', 'Verão – 訂正개정')).toBe('Verão – ');
  expect(held('Newsreader', 'Verão – 訂正개정')).toBe('Verão – ');
  expect(held('Noto Sans JP', '訂正개정')).toBe('訂正');
  expect(held('Noto Sans KR', '訂正개정')).toBe('개정');
  for (const family of ['archivo', 'newsreader', 'noto-sans-jp', 'noto-sans-kr'])
    expect(files.get(`fonts/OFL-${family}.txt`)).toContain('SIL Open Font License, Version 1.1');
  const bytes = urls.reduce((sum, url) => sum + (files.get(`fonts/${url}`)?.length ?? 0), 0);
  // Measured 35 kB; a whole family would be hundreds.
  expect(bytes).toBeLessThan(50_000);
});
