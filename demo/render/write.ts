import { mkdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import sharp from 'sharp';
import { KINDS, type Kind, randomScene } from './random.ts';
import { render } from './render.ts';
import type { Scene } from './scene.ts';

/** Writes rendered pictures with their truth: `npx tsx demo/render/write.ts KIND N FOLDER [SEED]`. */
const [kind = '', count = '1', folder = '.', first = '1'] = process.argv.slice(2);
if (!KINDS.includes(kind as Kind)) throw new RangeError(`a kind is one of ${KINDS.join(', ')}`);
for (let k = 0; k < Number(count); k++) {
  const seed = Number(first) + k;
  const name = join(folder, `${kind}-${String(seed).padStart(4, '0')}`);
  const started = process.cpuUsage();
  await writeCase(name, randomScene(kind as Kind, seed), seed);
  const { user } = process.cpuUsage(started);
  console.log(`${name} ${(user / 1e6).toFixed(2)} s`);
}

async function writeCase(name: string, scene: Scene, seed: number): Promise<void> {
  mkdirSync(name, { recursive: true });
  const turns: readonly (readonly [string, Scene])[] = picturesOf(scene);
  for (const [at, [file, one]] of turns.entries()) {
    const { picture, truth, whitened } = render(one, seed + 1000 * at);
    const { width, height, samples } = picture;
    const raw = { width, height, channels: 3 as const };
    const jpeg = sharp(samples as Uint8Array, { raw }).jpeg({ quality: scene.develop.jpegQuality });
    const sized = picture.dpi ? jpeg.withMetadata({ density: picture.dpi }) : jpeg;
    await sized.toFile(join(name, file));
    if (at > 0) continue;
    const all = {
      case: name,
      ...truth,
      ...lampsTruth(scene),
      images: turns.map(([one]) => one),
      image: file,
    };
    writeFileSync(join(name, 'truth.json'), JSON.stringify(all, null, 1));
    if (whitened && 'mask' in truth)
      await sharp(whitened.mask, {
        raw: { width: whitened.maskWidth, height: whitened.maskHeight, channels: 1 },
      }).toFile(join(name, 'mask.png'));
    if (scene.kind === 'relief')
      writeFileSync(join(name, 'setup.json'), JSON.stringify(setupOf(scene, truth), null, 1));
  }
}

/** Each lamp in turn; of one low lamp, its twin under soft light beside it. */
function picturesOf(scene: Scene): readonly (readonly [string, Scene])[] {
  const { lamps } = scene.lighting;
  if (lamps.length === 0) return [['front.jpg', scene]];
  const lit = lamps.map((lamp, i): readonly [string, Scene] => [
    `front.light-${i + 1}.jpg`,
    { ...scene, lighting: { ...scene.lighting, lamps: [lamp] } },
  ]);
  const soft = { ...scene, lighting: { ...scene.lighting, lamps: [], ambient: 0.85 } };
  return scene.kind === 'relief' ? lit : [...lit, ['front.jpg', soft]];
}

function lampsTruth(scene: Scene) {
  const [lamp] = scene.lighting.lamps;
  if (!lamp || scene.kind === 'relief') return {};
  const [x, y, z] = lamp.positionMm;
  return {
    mode: 'rake',
    diffuseImage: 'front.jpg',
    rakeAzimuthDeg: ((Math.atan2(-y, x) * 180) / Math.PI + 360) % 360,
    rakeElevationDeg: (Math.atan2(z, Math.hypot(x, y)) * 180) / Math.PI,
  };
}

function setupOf(scene: Scene, truth: Readonly<Record<string, unknown>>) {
  const reference = truth.reference as
    | { ballCentrePx: unknown; ballRadiusPx: number; ballRadiusMm: number }
    | undefined;
  return {
    card_mm: scene.face?.sizeMm,
    pictures: scene.lighting.lamps.map(({ positionMm }, i) => ({
      file: `front.light-${i + 1}.jpg`,
      lamp_mm: positionMm,
    })),
    ball: reference
      ? {
          centre_px: reference.ballCentrePx,
          radius_px: reference.ballRadiusPx,
          radius_mm: reference.ballRadiusMm,
        }
      : null,
  };
}
