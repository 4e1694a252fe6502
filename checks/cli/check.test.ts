import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { answerTo, inputPath } from './answer.ts';

const written = (name: string) =>
  readFileSync(new URL(`./output/${name}`, import.meta.url), 'utf8');

describe('check', () => {
  it.each([
    ['quiet', [], 0, 'check-quiet.txt'],
    ['quiet', ['--json'], 0, 'check-quiet.json'],
    ['faulty', [], 1, 'check-faulty.txt'],
    ['faulty', ['--json'], 1, 'check-faulty.json'],
    ['bare', [], 0, 'check-bare.txt'],
  ] as const)('%s %j', async (dossier, options, exit, file) => {
    const answer = await answerTo(['check', inputPath(dossier), ...options]);
    expect(answer).toEqual({ exit, out: written(file), err: '' });
  });
});
