import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { delimiter, join } from 'node:path';
import { expect, it } from 'vitest';
import { findChromium } from './chromium.js';

it('finds the browser that is named, else the first on the path', () => {
  const folder = mkdtempSync(join(tmpdir(), 'printlore-path-'));
  const file = join(folder, 'chromium');
  expect(findChromium({ CHROME_PATH: '/opt/browser' })).toBe('/opt/browser');
  expect(findChromium({ PATH: ['/nowhere', folder].join(delimiter) })).not.toBe(file);
  writeFileSync(file, '');
  expect(findChromium({ PATH: ['/nowhere', folder].join(delimiter) })).toBe(file);
  rmSync(folder, { recursive: true });
});
