import { existsSync } from 'node:fs';
import { delimiter, join } from 'node:path';

const NAMES = ['chromium', 'chromium-browser', 'google-chrome', 'google-chrome-stable'];
const PLACES = [
  '/Applications/Chromium.app/Contents/MacOS/Chromium',
  '/Applications/Google Chrome.app/Contents/MacOS/Google Chrome',
  'C:\\Program Files\\Google\\Chrome\\Application\\chrome.exe',
];

/**
 * The Chromium that the browser checks drive: the one that `CHROME_PATH` names, else the
 * first that lies on the path or in the usual places.
 * @param {NodeJS.ProcessEnv} env
 * @returns {string | undefined} `undefined` where there is none
 */
export function findChromium(env) {
  if (env.CHROME_PATH) return env.CHROME_PATH;
  const folders = (env.PATH ?? '').split(delimiter).filter(Boolean);
  const onPath = folders.flatMap((folder) => NAMES.map((name) => join(folder, name)));
  return [...onPath, ...PLACES].find((file) => existsSync(file));
}
