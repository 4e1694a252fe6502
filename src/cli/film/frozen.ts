import { stat } from 'node:fs/promises';
import { join } from 'node:path';
import { type Account, type Frozen, movedFigures } from '../../chronicle/index.ts';
import { SPOKEN } from '../../press/index.ts';
import { wrapped } from '../report/width.ts';
import { counted } from '../report/words.ts';
import type { Terminal } from '../terminal.ts';
import { WrongCall } from '../wrong-call.ts';
import { textIn } from './told.ts';

/** What was said in a film, from its folder or the file itself. Throws `WrongCall` where it is none. */
export async function frozenIn(path: string): Promise<Frozen> {
  const folder = await stat(path).then(
    (found) => found.isDirectory(),
    () => false,
  );
  const file = folder ? join(path, SPOKEN) : path;
  const text = await textIn(file);
  try {
    const value: Frozen = JSON.parse(text);
    if (value.format === 'printlore-film/1') return value;
  } catch {
    throw new WrongCall(`${file} is no JSON; ${SPOKEN} of a film is expected.`);
  }
  throw new WrongCall(`${file} does not hold what a film said; ${SPOKEN} of a film is expected.`);
}

/** Lists the figures of a film that no longer hold; 1 where there are some. */
export async function checkSpoken(
  frozen: Frozen,
  account: Account,
  terminal: Terminal,
): Promise<0 | 1> {
  const moved = movedFigures(frozen, account);
  const all = counted(frozen.figures.length, 'spoken figure');
  const found = moved.flatMap(({ name, lines, was, is, why }) => [
    `${name} (${lines.join(', ')})`,
    ...wrapped(`said: ${was}`, terminal.width - 2).map((line) => `  ${line}`),
    ...wrapped(`now:  ${is ?? 'not there'}`, terminal.width - 2).map((line) => `  ${line}`),
    ...wrapped(why, terminal.width - 2).map((line) => `  ${line}`),
  ]);
  const head =
    moved.length === 0
      ? `${all}, all of which hold.`
      : `${all}, of which ${moved.length} no longer hold:`;
  await terminal.write(`${[head, ...found].join('\n')}\n`);
  return moved.length === 0 ? 0 : 1;
}
