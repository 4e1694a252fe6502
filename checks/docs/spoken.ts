import { main } from '../../src/cli/index.ts';

/** What a command printed, and how it ended. */
export interface Spoken {
  readonly exit: number;
  readonly out: string;
  readonly err: string;
}

/** Runs a command in this process and keeps what it prints; it cannot start a workbench. */
export async function speak(...words: readonly string[]): Promise<Spoken> {
  let out = '';
  let err = '';
  const terminal = {
    width: 100,
    watched: false,
    write: async (text: string) => {
      out += text;
    },
    say: (text: string) => {
      err += text;
    },
  };
  const start = () => Promise.reject(new Error('no workbench in the checks of the documents'));
  const exit = await main(words, { start }, terminal);
  return { exit, out, err };
}
