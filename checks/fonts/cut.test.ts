import { createHash } from 'node:crypto';
import { describe, expect, it } from 'vitest';
import { cutFonts } from '../../src/host/index.ts';
import witness from '../fixtures/fonts/read.json' with { type: 'json' };
import { TEXTS } from './texts.ts';

// What fontTools read from the very bytes (the hash holds them together): checks/makers/fonts.
describe.each(TEXTS)('fonts cut to the text “$name”', ({ name, text, wish, options }) => {
  it('hold every letter of it, by fontTools, under their own names', async () => {
    const { fonts, missing } = await cutFonts(text, wish, options);
    expect(missing).toBe('');
    const read = fonts.map(({ family, bytes }) => {
      const file = `${name} ${family}.${options.format}`;
      const found = witness.fonts.find((one) => one.file === file);
      expect(found?.sha256).toBe(createHash('sha256').update(bytes).digest('hex'));
      if (options.format === 'ttf') expect(found?.family).toBe(family);
      expect(found).toMatchObject({ weight: wish.weight, axes: false });
      return found?.letters ?? '';
    });
    const held = new Set(read.join(''));
    expect([...text].filter((letter) => !held.has(letter))).toEqual([]);
    expect([...held].filter((letter) => !text.includes(letter))).toEqual([]);
  });
});

describe('fonts for a text', () => {
  it('name what no font of the house has', async () => {
    const wish = { family: 'archivo', weight: 400 } as const;
    const { missing, fonts } = await cutFonts('Hare 🐇 ꙮ\n', wish, { format: 'ttf' });
    expect(missing).toBe('ꙮ🐇');
    expect(fonts.map(({ letters }) => letters)).toEqual([' Haer']);
  });

  it('take Han letters in the shapes of the language', async () => {
    const families = async (language: string) => {
      const wish = { family: 'newsreader', weight: 400 } as const;
      const { fonts } = await cutFonts('潮', wish, { format: 'ttf', language });
      return fonts.map(({ family }) => family.replace(/ \d+$/, ''));
    };
    expect(await families('ko-KR')).toEqual(['Noto Sans KR']);
    expect(await families('ja')).toEqual(['Noto Sans JP']);
  });

  it('refuse a weight that the family does not have', async () => {
    const wish = { family: 'newsreader', weight: 900 } as const;
    await expect(cutFonts('a', wish, { format: 'ttf' })).rejects.toThrow(
      new RangeError('a weight is from 200 to 800, found 900'),
    );
  });
});
