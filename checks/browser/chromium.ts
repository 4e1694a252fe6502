import { existsSync } from 'node:fs';
import { type Browser, chromium } from 'playwright-core';

const PLACES = [
  '/usr/bin/chromium',
  '/usr/bin/chromium-browser',
  '/usr/bin/google-chrome',
  '/usr/bin/google-chrome-stable',
  '/snap/bin/chromium',
  '/Applications/Google Chrome.app/Contents/MacOS/Google Chrome',
  '/Applications/Chromium.app/Contents/MacOS/Chromium',
  'C:\\Program Files\\Google\\Chrome\\Application\\chrome.exe',
];

/** The browser to test with: `CHROME_PATH`, or the usual places; undefined where there is none. */
export function chromiumPath(): string | undefined {
  return [process.env.CHROME_PATH ?? '', ...PLACES].find((path) => path !== '' && existsSync(path));
}

/** Starts the browser with everything off that would call home. Throws where there is none. */
export async function launch(): Promise<Browser> {
  const executablePath = chromiumPath();
  if (!executablePath) throw new Error('launch requires a Chromium; set CHROME_PATH');
  return chromium.launch({
    executablePath,
    args: [
      '--no-sandbox',
      '--disable-gpu',
      '--disable-quic',
      '--no-first-run',
      '--disable-background-networking',
      '--disable-component-update',
      '--disable-sync',
    ],
  });
}
