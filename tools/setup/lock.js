import { createHash } from 'node:crypto';
import { readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { setTimeout as sleep } from 'node:timers/promises';

/** @param {number} pid */
function alive(pid) {
  try {
    process.kill(pid, 0);
    return true;
  } catch (error) {
    return /** @type {NodeJS.ErrnoException} */ (error).code === 'EPERM';
  }
}

/**
 * Tries to take the lock; a lock whose owner has died is cleared away.
 * @param {string} file
 */
function take(file) {
  try {
    writeFileSync(file, String(process.pid), { flag: 'wx' });
    return true;
  } catch (error) {
    if (/** @type {NodeJS.ErrnoException} */ (error).code !== 'EEXIST') throw error;
  }
  const owner = Number(readIfThere(file));
  if (owner > 0 && !alive(owner)) rmSync(file, { force: true });
  return false;
}

/** @param {string} file */
function readIfThere(file) {
  try {
    return readFileSync(file, 'utf8');
  } catch (error) {
    if (/** @type {NodeJS.ErrnoException} */ (error).code === 'ENOENT') return '';
    throw error;
  }
}

/**
 * Does a piece of work on a checkout while no other process does the like on it.
 * @template T
 * @param {string} root the checkout
 * @param {() => Promise<T>} work
 * @returns {Promise<T>}
 */
export async function alone(root, work) {
  const name = createHash('sha256').update(root).digest('hex').slice(0, 16);
  const file = join(tmpdir(), `printlore-setup-${name}.lock`);
  while (!take(file)) await sleep(100);
  try {
    return await work();
  } finally {
    rmSync(file, { force: true });
  }
}
