import { mkdir, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { cutFonts } from '../../../src/host/index.ts';
import { TEXTS } from '../../fonts/texts.ts';

/** Writes the fonts cut for the texts of the check into a folder, for `read.py` to read. */
const [folder = 'cut'] = process.argv.slice(2);
await mkdir(folder, { recursive: true });
for (const { name, text, wish, options } of TEXTS) {
  const { fonts } = await cutFonts(text, wish, options);
  for (const { family, bytes } of fonts)
    await writeFile(join(folder, `${name} ${family}.${options.format}`), bytes);
}
