import { dirname } from 'node:path';
import { fileURLToPath } from 'node:url';
import { build, stale } from './build.js';
import { install, isInstalled } from './install.js';
import { alone } from './lock.js';

const root = dirname(dirname(dirname(fileURLToPath(import.meta.url))));

/** @param {string} words */
const say = (words) => console.error(words);

/**
 * Installs what is missing and builds what has changed, saying so on standard error. Where nothing
 * is to be done it says nothing and takes some hundredths of a second.
 * @param {{ page: boolean }} wanted
 */
export async function makeReady(wanted) {
  if (isInstalled(root) && stale(root, wanted).length === 0) return;
  await alone(root, async () => {
    if (!isInstalled(root)) {
      say('Installing the packages that are missing; this takes a minute or two …');
      install(root);
    }
    const parts = stale(root, wanted);
    if (parts.length === 0) return;
    say(`Building the ${parts.map(({ part }) => part.name).join(' and the ')} …`);
    await build(root, parts);
  });
}
