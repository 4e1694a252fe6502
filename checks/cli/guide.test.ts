import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { answerTo } from './answer.ts';

const guide = readFileSync(new URL('../../docs/guide/commands.md', import.meta.url), 'utf8');

/** Names that stand first on the lines of one part of a help text. */
async function named(words: readonly string[], part: 'Commands' | 'Options') {
  const { out } = await answerTo([...words, '--help']);
  const [, body = ''] = out.split(`${part}:\n`);
  const lines = (body.split('\n\n')[0] ?? '').split('\n');
  return lines.flatMap((line) => /^ {2}(?:-\w, )?([\w-]+)/.exec(line)?.[1] ?? []);
}

describe('the guide', async () => {
  const commands = (await named([], 'Commands')).filter((name) => name !== 'help');

  it('knows the commands by their help', () => {
    expect(commands).toEqual([
      'check',
      'date',
      'population',
      'notes',
      'identify',
      'value',
      'decide',
      'relief',
      'examine',
      'screen',
      'colour',
      'compare',
      'film',
      'publish',
      'revisions',
      'packet',
      'open',
    ]);
  });

  it.each(commands)('names %s and each of its options', async (command) => {
    expect(guide).toContain(`printlore ${command}`);
    for (const option of await named([command], 'Options')) expect(guide).toContain(option);
  });
});
