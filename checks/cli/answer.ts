import { fileURLToPath } from 'node:url';
import { main, type Workbench } from '../../src/cli/index.ts';

/** What a command wrote and how it ended. */
export interface Answer {
  readonly exit: number;
  readonly out: string;
  readonly err: string;
}

const noWorkbench: Workbench = {
  start: () => Promise.reject(new Error('these checks open no workbench')),
};

/** A folder or file under `checks/cli/input`. */
export function inputPath(name: string): string {
  return fileURLToPath(new URL(`./input/${name}`, import.meta.url));
}

/** Runs a command in this process, with nobody watching. */
export async function answerTo(
  words: readonly string[],
  workbench: Workbench = noWorkbench,
): Promise<Answer> {
  const said = { out: '', err: '' };
  const exit = await main(words, workbench, {
    width: 100,
    watched: false,
    write: async (text) => {
      said.out += text;
    },
    say: (text) => {
      said.err += text;
    },
  });
  return { exit, ...said };
}
