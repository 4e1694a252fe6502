import { spawn } from 'node:child_process';
import { existsSync, mkdirSync, readdirSync, readFileSync, rmSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { findChromium } from './chromium.js';
import { sumOf, tallyOf } from './tally.js';

const root = dirname(dirname(dirname(fileURLToPath(import.meta.url))));
const bin = (/** @type {string} */ file) => join(root, 'node_modules', file);

/** Every check that is one command; each counts once. */
const COMMANDS = [
  { name: 'types', words: [bin('typescript/bin/tsc'), '-p', '.', '--noEmit'] },
  {
    name: 'lint',
    words: [bin('@biomejs/biome/bin/biome'), 'check', '--error-on-warnings', '.'],
  },
  { name: 'rules of the house', words: [bin('tsx/dist/cli.mjs'), 'tools/rules/main.ts'] },
  {
    name: 'import walls',
    words: [
      bin('dependency-cruiser/bin/dependency-cruise.mjs'),
      ...['--config', '.dependency-cruiser.mjs', 'src', 'checks', 'demo', 'tools'],
    ],
  },
  { name: 'nothing unused', words: [bin('knip/bin/knip.js')] },
  { name: 'size of the page', words: ['tools/checks/page-size.js'] },
];

/**
 * Runs one command of Node and keeps what it said.
 * @param {readonly string[]} words
 * @param {{ show: boolean, env?: NodeJS.ProcessEnv }} how
 */
async function run(words, { show, env = process.env }) {
  const child = spawn(process.execPath, [...words], {
    cwd: root,
    env: { ...env, NODE_ENV: 'test' },
    stdio: ['ignore', show ? 'inherit' : 'pipe', show ? 'inherit' : 'pipe'],
  });
  /** @type {Buffer[]} */
  const said = [];
  child.stdout?.on('data', (piece) => said.push(piece));
  child.stderr?.on('data', (piece) => said.push(piece));
  /** @type {number | null} */
  const code = await new Promise((done) => child.on('close', done));
  return { code, said: Buffer.concat(said).toString() };
}

/**
 * @param {{ name: string, words: readonly string[] }} command
 * @returns {Promise<import('./tally.js').Tally>}
 */
async function runCommand({ name, words }) {
  const began = performance.now();
  const { code, said } = await run(words, { show: false });
  const seconds = ((performance.now() - began) / 1000).toFixed(1);
  console.log(`${code === 0 ? '✓' : '✗'} ${name} (${seconds} s)`);
  if (code !== 0) console.log(said);
  return { passed: code === 0 ? 1 : 0, failed: code === 0 ? 0 : 1, notRun: [] };
}

/**
 * @param {'unit' | 'browser'} project
 * @param {NodeJS.ProcessEnv} env
 */
async function runTests(project, env) {
  const file = join(root, 'node_modules', '.printlore', `${project}.json`);
  mkdirSync(dirname(file), { recursive: true });
  rmSync(file, { force: true });
  const words = ['run', '--project', project, '--reporter=default', '--reporter=json'];
  const { code } = await run([bin('vitest/vitest.mjs'), ...words, `--outputFile.json=${file}`], {
    show: true,
    env,
  });
  return tallyOf(existsSync(file) ? JSON.parse(readFileSync(file, 'utf8')) : undefined, code);
}

/** Browser checks by name, for when they cannot be run. */
function browserChecks() {
  const folder = join(root, 'checks', 'browser');
  const files = readdirSync(folder).filter((name) => name.endsWith('.test.ts'));
  return files.map((name) => `browser: ${name.replace('.test.ts', '')} (no Chromium here)`);
}

/**
 * Runs every check there is and ends with a line `N passed, N failed`. Checks that cannot be run
 * here are named; on a build machine (`CI`) they count as failed.
 * @returns {Promise<0 | 1>} how the process should end
 */
export async function runChecks() {
  const tallies = [];
  for (const command of COMMANDS) tallies.push(await runCommand(command));
  tallies.push(await runTests('unit', process.env));
  const chromium = findChromium(process.env);
  tallies.push(
    chromium
      ? await runTests('browser', { ...process.env, CHROME_PATH: chromium })
      : { passed: 0, failed: 0, notRun: browserChecks() },
  );
  const { passed, failed, notRun } = sumOf(tallies, { complete: Boolean(process.env.CI) });
  for (const name of notRun) console.log(`not run: ${name}`);
  console.log(`${passed} passed, ${failed} failed`);
  return failed === 0 ? 0 : 1;
}
