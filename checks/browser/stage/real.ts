import { cp, mkdtemp, readFile, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { startServer } from '../../../src/server/index.ts';

/** The workbench itself, over a copy of the demo that may be written. */
export interface RealStage {
  readonly url: string;
  readonly textOf: (file: string) => Promise<string>;
  /** Writes a file as another program would. */
  readonly write: (file: string, text: string) => Promise<void>;
  readonly close: () => Promise<void>;
}

/** Starts it with the built page in `page`, on a free port. */
export async function realStage(page: string): Promise<RealStage> {
  const root = await mkdtemp(join(tmpdir(), 'printlore-page-'));
  const folder = join(root, 'dossier');
  await cp('demo/dossier', folder, { recursive: true });
  const dataFolder = join(root, 'data');
  const running = await startServer({ folder, port: 0, dataFolder, page });
  return {
    url: running.url,
    textOf: (file) => readFile(join(folder, file), 'utf8'),
    write: (file, text) => writeFile(join(folder, file), text),
    close: async () => {
      await running.close();
      await rm(root, { recursive: true });
    },
  };
}
