import { mkdirSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { demoFiles, truthText } from './files.ts';

/** Writes `demo/dossier` and `demo/truth.json` anew: `npx tsx demo/make.ts`. */
const here = dirname(fileURLToPath(import.meta.url));
for (const [name, text] of demoFiles()) {
  const path = join(here, 'dossier', name);
  mkdirSync(dirname(path), { recursive: true });
  writeFileSync(path, text);
}
writeFileSync(join(here, 'truth.json'), truthText());
