import fc from 'fast-check';
import { expect, it } from 'vitest';
import { writeJson } from './json.ts';

async function printed(value: object): Promise<{ text: string; pieces: number }> {
  const pieces: string[] = [];
  await writeJson(value, {
    width: 80,
    watched: false,
    write: async (text) => void pieces.push(text),
    say: () => {},
  });
  return { text: pieces.join(''), pieces: pieces.length };
}

it('prints what JSON.parse reads back', async () => {
  await fc.assert(
    fc.asyncProperty(fc.dictionary(fc.string(), fc.jsonValue()), async (value) => {
      expect(JSON.parse((await printed(value)).text)).toEqual(JSON.parse(JSON.stringify(value)));
    }),
  );
});

it('prints a long list in pieces, one entry a line', async () => {
  const list = Array.from({ length: 20_000 }, (_, id) => ({ id }));
  const { text, pieces } = await printed({ list });
  expect(pieces).toBeGreaterThan(2);
  expect(text.split('\n')).toHaveLength(list.length + 3);
});
