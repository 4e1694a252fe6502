import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import sharp from 'sharp';
import { afterAll, expect, it } from 'vitest';
import { answerTo } from './answer.ts';

const folder = mkdtempSync(join(tmpdir(), 'no-card-'));
afterAll(() => rmSync(folder, { recursive: true }));

it('guesses no grade in words from a picture without a card', async () => {
  const bare = join(folder, 'bare.png');
  const ground = { width: 400, height: 500, channels: 3, background: '#7a7a7a' } as const;
  await sharp({ create: ground }).png().toFile(bare);
  const { exit, out } = await answerTo(['examine', bare, '--card', '63x88']);
  expect(exit).toBe(1);
  expect(out).toContain('No card is seen in this picture');
  expect(out.replaceAll('\n', ' ')).toContain('not guessed, since nothing of this copy could');
  expect(out).not.toMatch(/\d+: \d+ %/);
});
