import { spawnSync } from 'node:child_process';
import { createHash } from 'node:crypto';
import { existsSync, mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { homedir, tmpdir } from 'node:os';
import { join } from 'node:path';

/** @typedef {{ version?: string, optional?: boolean, link?: boolean }} Locked */

/**
 * The packages of a lock file by where they lie.
 * @param {string} file
 * @returns {Record<string, Locked>}
 */
function packagesOf(file) {
  return JSON.parse(readFileSync(file, 'utf8')).packages;
}

/**
 * Whether npm's own record of what it installed agrees with the lock file. npm writes the record
 * when an installation is complete.
 * @param {string} root
 */
function recordAgrees(root) {
  const record = join(root, 'node_modules', '.package-lock.json');
  if (!existsSync(record)) return false;
  const installed = packagesOf(record);
  return Object.entries(packagesOf(join(root, 'package-lock.json'))).every(
    ([path, { version, optional }]) =>
      path === '' || installed[path]?.version === version || (optional && !installed[path]),
  );
}

/**
 * The packages that are missing are those of a lock file whose hash is not yet noted in
 * `node_modules`; so an installation that broke off half-way counts as missing.
 * @param {string} root
 */
export function isInstalled(root) {
  const note = join(root, 'node_modules', '.printlore-lock');
  const hash = hashOf(root);
  if (existsSync(note) && readFileSync(note, 'utf8') === hash) return true;
  if (!recordAgrees(root)) return false;
  writeFileSync(note, hash);
  return true;
}

/** @param {string} root */
function hashOf(root) {
  const lock = readFileSync(join(root, 'package-lock.json'));
  return createHash('sha256')
    .update(lock)
    .update(`${process.platform} ${process.arch}`)
    .digest('hex');
}

/**
 * Where npm may keep its cache: its usual folder, or one for this time alone where the usual one
 * cannot be written.
 * @param {NodeJS.ProcessEnv} env
 */
export function cacheFor(env) {
  const usual = env.npm_config_cache ?? join(homedir(), '.npm');
  try {
    mkdirSync(usual, { recursive: true });
    rmSync(mkdtempSync(join(usual, 'printlore-')), { recursive: true });
    return { folder: usual, temporary: false };
  } catch {
    // Not writable: said by `temporary`.
    return { folder: mkdtempSync(join(tmpdir(), 'printlore-npm-')), temporary: true };
  }
}

/** @param {NodeJS.ProcessEnv} env */
function npmOf(env) {
  const script = env.npm_execpath ?? '';
  if (script.endsWith('npm-cli.js'))
    return { command: process.execPath, words: [script], shell: false };
  return { command: 'npm', words: [], shell: process.platform === 'win32' };
}

/**
 * Installs the packages of the lock file, those for building and testing among them whatever
 * `NODE_ENV` says. Throws an `Error` where npm does not succeed.
 * @param {string} root
 */
export function install(root) {
  const { command, words, shell } = npmOf(process.env);
  const cache = cacheFor(process.env);
  const all = [...words, 'ci', '--include=dev', '--no-audit', '--no-fund', '--loglevel=error'];
  const env = { ...process.env, npm_config_cache: cache.folder };
  const { status, error } = spawnSync(command, all, {
    cwd: root,
    env,
    shell,
    stdio: ['ignore', 2, 2],
  });
  if (cache.temporary) rmSync(cache.folder, { recursive: true, force: true });
  if (status !== 0) {
    throw new Error(
      `The packages could not be installed: ${error?.message ?? `npm ended with ${status}`}.`,
    );
  }
  writeFileSync(join(root, 'node_modules', '.printlore-lock'), hashOf(root));
}
