import type { Terminal } from './terminal.ts';

const PIECE = 65_536;

/**
 * Prints a value as JSON, the entries of its lists one a line, in pieces, so that a long answer
 * never stands in memory as one text.
 */
export async function writeJson(value: object, terminal: Terminal): Promise<void> {
  let waiting = '';
  for (const piece of piecesOf(value)) {
    waiting += piece;
    if (waiting.length < PIECE) continue;
    await terminal.write(waiting);
    waiting = '';
  }
  await terminal.write(`${waiting}\n`);
}

function* piecesOf(value: object): Generator<string> {
  const entries = Object.entries(value).filter(([, part]) => part !== undefined);
  yield '{';
  for (const [index, [key, part]] of entries.entries()) {
    yield `${index === 0 ? '' : ',\n'}${JSON.stringify(key)}: `;
    yield* Array.isArray(part) ? listOf(part) : [JSON.stringify(part)];
  }
  yield '}';
}

function* listOf(list: readonly unknown[]): Generator<string> {
  yield '[';
  for (const [index, entry] of list.entries()) {
    yield `${index === 0 ? '\n' : ',\n'}${JSON.stringify(entry)}`;
  }
  yield list.length === 0 ? ']' : '\n]';
}
