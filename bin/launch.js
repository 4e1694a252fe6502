'use strict';

const { existsSync } = require('node:fs');
const { join } = require('node:path');
const { pathToFileURL } = require('node:url');

const root = join(__dirname, '..');

/** @param {string} file below `dist`, where the compiled code lies */
const compiled = (file) => import(pathToFileURL(join(root, 'dist', file)).href);

/** Joins terminal and server, which do not know of each other. */
const workbench = {
  /** @param {object} options */
  start: async (options) => (await compiled('server/index.js')).startServer(options),
};

/** Brings a source checkout up to date, then runs the command. */
async function launch() {
  const words = process.argv.slice(2);
  if (existsSync(join(root, 'src'))) {
    const { makeReady } = await import('../tools/setup/ready.js');
    await makeReady({ page: words[0] === 'open' });
  }
  const { main } = await compiled('cli/index.js');
  process.exitCode = await main(words, workbench);
}

launch().catch((error) => {
  console.error(error instanceof Error ? error.message : error);
  process.exitCode = 1;
});
