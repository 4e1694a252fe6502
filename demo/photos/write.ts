import { mkdirSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import sharp from 'sharp';
import type { Picture } from '../../src/bench/index.ts';
import { render } from '../render/render.ts';
import { chartPicture, cutOf } from './cuts.ts';
import { chartText, photosTruthText, setupText } from './setups.ts';
import { SHOTS } from './shots.ts';
import { SPECIMENS } from './specimens.ts';

/** Renders every picture of the demo into its dossier, with the set-ups beside them and the truth outside. */
export async function writePhotos(demo: string): Promise<void> {
  const dossier = join(demo, 'dossier');
  for (const { file, scene, seed } of SHOTS)
    await writeJpeg(join(dossier, file), render(scene, seed).picture, scene.develop.jpegQuality);
  for (const id of Object.keys(SPECIMENS)) {
    const folder = join(dossier, 'desk', 'photos', id);
    await writeJpeg(join(folder, 'cut.jpg'), cutOf(id).picture, 88);
    writeFileSync(join(folder, 'setup.json'), setupText(id));
  }
  const folder = join(dossier, 'desk', 'photos', 'hare-1');
  await writeJpeg(join(folder, 'chart.jpg'), chartPicture(), 92);
  writeFileSync(join(folder, 'chart.json'), chartText());
  writeFileSync(join(demo, 'photos-truth.json'), photosTruthText());
}

async function writeJpeg(path: string, picture: Picture, quality: number): Promise<void> {
  const { width, height, samples, dpi } = picture;
  mkdirSync(dirname(path), { recursive: true });
  const jpeg = sharp(samples as Uint8Array, { raw: { width, height, channels: 3 } }).jpeg({
    quality,
  });
  await (dpi ? jpeg.withMetadata({ density: dpi }) : jpeg).toFile(path);
}
