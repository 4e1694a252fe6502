import { once } from 'node:events';
import { openBrowser } from '../browser.ts';
import { filesIn } from '../dossier.ts';
import type { Terminal } from '../terminal.ts';
import type { Workbench } from '../workbench.ts';

/** Starts the workbench, prints its address and stays until it is interrupted. */
export async function open(
  folder: string | undefined,
  options: { open: boolean; port?: number },
  workbench: Workbench,
  terminal: Terminal,
): Promise<void> {
  if (folder !== undefined) await filesIn(folder);
  const running = await workbench.start({
    ...(folder === undefined ? {} : { folder }),
    ...(options.port === undefined ? {} : { port: options.port }),
  });
  await terminal.write(`Printlore is open at ${running.url}\n`);
  if (options.open && !(await openBrowser(running.url))) {
    await terminal.write('There is no browser to open here: go to that address with one.\n');
  }
  await terminal.write('Press Ctrl+C to close it.\n');
  await Promise.race([once(process, 'SIGINT'), once(process, 'SIGTERM')]);
  await running.close();
}
