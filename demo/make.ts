import { mkdirSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { demoFiles, truthText } from './files.ts';
import { writePhotos } from './photos/write.ts';

/**
 * Writes `demo/dossier` and `demo/truth.json` anew: `npx tsx demo/make.ts`. Its pictures take a
 * minute or two and are made only when asked for: `npx tsx demo/make.ts pictures`.
 */
const here = dirname(fileURLToPath(import.meta.url));
if (process.argv[2] === 'pictures') await writePhotos(here);
for (const [name, text] of demoFiles()) {
  const path = join(here, 'dossier', name);
  mkdirSync(dirname(path), { recursive: true });
  writeFileSync(path, text);
}
writeFileSync(join(here, 'truth.json'), truthText());
