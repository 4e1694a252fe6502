import { cp, mkdtemp, readFile, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Browser } from 'playwright-core';
import { afterAll, beforeAll } from 'vitest';
import { startServer } from '../../../src/server/index.ts';
import { launch } from '../chromium.ts';
import { builtPage } from '../page.ts';

/** The workbench itself, over a copy of the demo that may be written. */
export interface RealStage {
  readonly url: string;
  readonly textOf: (file: string) => Promise<string>;
  /** Writes a file as another program would. */
  readonly write: (file: string, text: string) => Promise<void>;
  readonly close: () => Promise<void>;
}

/** The workbench and a browser, both there once the tests of the describing block begin. */
export interface RealPage {
  readonly browser: Browser;
  readonly stage: RealStage;
}

/** Starts them before the first test of a block and ends them after its last. */
export function onRealPage(): RealPage {
  let stage: RealStage | undefined;
  let browser: Browser | undefined;
  beforeAll(async () => {
    stage = await realStage(await builtPage());
    browser = await launch();
  }, 120_000);
  afterAll(async () => {
    await browser?.close();
    await stage?.close();
  }, 60_000);
  return {
    get browser() {
      return browser!;
    },
    get stage() {
      return stage!;
    },
  };
}

/** Starts the workbench with the built page in `page`, on a free port. */
async function realStage(page: string): Promise<RealStage> {
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
