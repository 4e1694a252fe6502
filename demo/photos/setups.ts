import { sightOf } from '../render/camera.ts';
import { truthOf } from '../render/truth.ts';
import { whiten } from '../render/wear.ts';
import { chart, truthOfCutOf } from './cuts.ts';
import { LAMPS, SHOTS, type Shot } from './shots.ts';
import { SPECIMENS } from './specimens.ts';

/** The `setup.json` of a copy: its pictures under the moved lamp. */
export function setupText(id: string): string {
  const lit = SHOTS.filter(({ of, file }) => of === id && file.includes('.light-'));
  const scene = (lit[0] as Shot).scene;
  const size = scene.face?.sizeMm ?? [63, 88];
  const { ball, camera } = scene;
  const near = camera.focalPx / camera.pxPerMm;
  const seen = ball && {
    centre_px: sightOf(camera, size).pixelOf(ball.centreMm, ball.radiusMm - scene.thicknessMm),
    radius_px: (ball.radiusMm * camera.focalPx) / (near - ball.radiusMm + scene.thicknessMm),
    radius_mm: ball.radiusMm,
  };
  const pictures = lit.map(({ file }, i) => ({
    file: file.slice(file.lastIndexOf('/') + 1),
    lamp_mm: LAMPS[i]?.positionMm,
  }));
  return json({ card_mm: size, pictures, ball: seen ?? null });
}

/** The `chart.json` beside the chart: patches with their colour, and those to be measured. */
export function chartText(): string {
  const { patches, tests, sizePx } = chart();
  const told = patches.map(({ lab, centrePx }) => ({ lab, centre_px: centrePx, size_px: sizePx }));
  const asked = tests.map(({ centrePx }) => ({ lab: null, centre_px: centrePx, size_px: sizePx }));
  return json({ patches: [...told, ...asked] });
}

/** What is true of every picture of the demo, by its file. */
export function photosTruthText(): string {
  const shots = SHOTS.map(({ file, scene, seed }) => [file, truthOfShot({ scene, seed })]);
  const cuts = Object.keys(SPECIMENS).map((id) => [`desk/photos/${id}/cut.jpg`, truthOfCutOf(id)]);
  const { patches, tests } = chart();
  const told = { patches, testPatches: tests };
  const all = [...shots, ...cuts, ['desk/photos/hare-1/chart.jpg', told]];
  // A line a picture, to a tenth of a micrometre: exact enough, and short enough to be read.
  const lines = all.map(([file, truth]) => `"${file}": ${JSON.stringify(truth, rounded)}`);
  return `{\n${lines.join(',\n')}\n}\n`;
}

function rounded(_: string, value: unknown): unknown {
  return typeof value === 'number' ? Math.round(value * 1e4) / 1e4 : value;
}

function truthOfShot({ scene, seed }: Pick<Shot, 'scene' | 'seed'>) {
  const { face, marks } = scene;
  const whitened = face && whiten(null, marks, face.sizeMm, face.cornerRadiusMm);
  const { mask, maskPxPerMm, image, ...truth } = truthOf(scene, seed, whitened);
  void [mask, maskPxPerMm, image];
  return truth;
}

function json(value: unknown): string {
  return `${JSON.stringify(value, null, 1)}\n`;
}
