import { readdirSync, readFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { gzipSync } from 'node:zlib';

/** Kilobytes of script, compressed, that the whole page may weigh. */
const BUDGET_KB = 360;

const root = dirname(dirname(dirname(fileURLToPath(import.meta.url))));
const folder = join(root, 'dist', 'web', 'assets');
const scripts = readdirSync(folder).filter((name) => name.endsWith('.js'));
const bytes = scripts.reduce(
  (sum, name) => sum + gzipSync(readFileSync(join(folder, name))).length,
  0,
);
const weight = (bytes / 1000).toFixed(0);
console.log(`${scripts.length} scripts weigh ${weight} kB compressed, ${BUDGET_KB} at most`);
process.exitCode = scripts.length > 0 && bytes <= BUDGET_KB * 1000 ? 0 : 1;
