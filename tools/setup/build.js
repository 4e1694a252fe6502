import { spawn } from 'node:child_process';
import { createHash } from 'node:crypto';
import {
  existsSync,
  mkdirSync,
  readdirSync,
  readFileSync,
  rmSync,
  statSync,
  writeFileSync,
} from 'node:fs';
import { join, relative, sep } from 'node:path';

/** @typedef {{ name: string, wants: (file: string) => boolean, run: (root: string) => Promise<void> }} Part */

/** What a folder holds that is built, tests left out.
 * @param {string} folder
 * @returns {string[]}
 */
function filesBelow(folder) {
  return readdirSync(folder, { withFileTypes: true }).flatMap((entry) => {
    const path = join(folder, entry.name);
    if (entry.isDirectory()) return filesBelow(path);
    return /\.test\.tsx?$/.test(entry.name) ? [] : [path];
  });
}

/**
 * A short word that changes when a source of the part changes: by name, size and time of change.
 * @param {string} root
 * @param {Part} part
 */
function signatureOf(root, part) {
  const hash = createHash('sha256');
  const rim = ['package-lock.json', 'tsconfig.json', 'tsconfig.build.json'];
  const sources = filesBelow(join(root, 'src')).filter((file) =>
    part.wants(relative(root, file).split(sep).join('/')),
  );
  for (const file of [...rim.map((name) => join(root, name)), ...sources.sort()]) {
    const { size, mtimeMs } = statSync(file);
    hash.update(`${relative(root, file)} ${size} ${mtimeMs}\n`);
  }
  return hash.digest('hex');
}

/**
 * @param {string} root
 * @param {readonly string[]} words
 */
async function run(root, words) {
  const env = { ...process.env, NODE_ENV: 'production' };
  const child = spawn(process.execPath, [...words], {
    cwd: root,
    env,
    stdio: ['ignore', 'pipe', 'pipe'],
  });
  /** @type {Buffer[]} */
  const said = [];
  child.stdout.on('data', (piece) => said.push(piece));
  child.stderr.on('data', (piece) => said.push(piece));
  const code = await new Promise((done) => child.on('close', done));
  if (code !== 0) throw new Error(`Building failed.\n${Buffer.concat(said).toString()}`);
}

/** @type {readonly Part[]} */
const PARTS = [
  {
    name: 'code',
    wants: (file) => !file.startsWith('src/web/'),
    run: async (root) => {
      const dist = join(root, 'dist');
      mkdirSync(dist, { recursive: true });
      for (const name of readdirSync(dist)) {
        if (name !== 'web' && !name.startsWith('.')) rmSync(join(dist, name), { recursive: true });
      }
      await run(root, ['node_modules/typescript/bin/tsc', '-p', 'tsconfig.build.json']);
    },
  },
  {
    name: 'page',
    wants: () => true,
    run: (root) =>
      run(root, ['node_modules/vite/bin/vite.js', 'build', 'src/web', '--logLevel', 'warn']),
  },
];

/**
 * The parts of `dist` whose sources have changed since they were built.
 * @param {string} root
 * @param {{ page: boolean }} wanted without the page the terminal's part alone
 */
export function stale(root, { page }) {
  return PARTS.filter(({ name }) => page || name === 'code')
    .map((part) => ({
      part,
      signature: signatureOf(root, part),
      note: join(root, 'dist', `.${part.name}`),
    }))
    .filter(({ note, signature }) => !existsSync(note) || readFileSync(note, 'utf8') !== signature);
}

/**
 * Builds what is stale; both parts at once.
 * @param {string} root
 * @param {ReturnType<typeof stale>} parts
 */
export async function build(root, parts) {
  for (const { note } of parts) rmSync(note, { force: true });
  await Promise.all(parts.map(({ part }) => part.run(root)));
  for (const { note, signature } of parts) writeFileSync(note, signature);
}
