import type { FaceAnswer } from '../examine/types.ts';
import type { Frame } from '../frame/types.ts';
import type { SizeMm } from '../geometry/points.ts';
import { recolouredSign } from './recoloured.ts';
import type { Sign } from './sign.ts';
import { type Across, trimmedSign } from './trimmed.ts';

/**
 * Signs of alteration of a copy against references of its printing: its size and borders against
 * theirs, and its rim. Without dots an inch the printed frame is the scale, as it was not cut: a card
 * that was trimmed is small for its frame. A sign that could not be looked for is left out.
 *
 * @param sizeMm size of the product, or of the references where it is not told
 */
export function signsAgainst(
  copy: FaceAnswer,
  references: readonly FaceAnswer[],
  sizeMm: SizeMm,
): readonly Sign[] {
  const own = acrossOf(copy, references, sizeMm);
  const rims = references.flatMap(({ rim }) => rim ?? []);
  return [
    ...(own ? [trimmedSign(own.copy, own.nominal, own.others)] : []),
    ...(copy.rim ? [recolouredSign(copy.rim, rims)] : []),
  ];
}

interface Measured {
  readonly copy: readonly [Across, Across];
  readonly nominal: SizeMm;
  readonly others: readonly SizeMm[];
}

function acrossOf(
  copy: FaceAnswer,
  references: readonly FaceAnswer[],
  sizeMm: SizeMm,
): Measured | null {
  const scans = references.flatMap(({ size }) => (size?.from === 'dpi' ? [size.mm] : []));
  if (copy.size?.from === 'dpi' && copy.size.sdMm && scans.length > 0) {
    const { mm, sdMm } = copy.size;
    const borders = differencesOf(copy, references);
    const one = (k: 0 | 1): Across => ({
      mm: mm[k],
      sdMm: sdMm[k],
      borderDifference: borders?.[k] ?? null,
    });
    return { copy: [one(0), one(1)], nominal: middleOf(scans), others: scans };
  }
  return byFrame(copy, references, sizeMm);
}

/** Sizes by the printed frame: how many frames wide and high the card is. */
function byFrame(
  copy: FaceAnswer,
  references: readonly FaceAnswer[],
  sizeMm: SizeMm,
): Measured | null {
  const own = framesOf(copy, sizeMm);
  const known = references.flatMap((one) => framesOf(one, sizeMm) ?? []);
  const borders = differencesOf(copy, references);
  if (!own || known.length === 0) return null;
  const usual = middleOf(known.map(({ frames }) => frames));
  const inMm = (frames: SizeMm): SizeMm => [
    (sizeMm[0] * frames[0]) / usual[0],
    (sizeMm[1] * frames[1]) / usual[1],
  ];
  const mm = inMm(own.frames);
  const among = ([0, 1] as const).map((k) => Math.max(...known.map(({ sdMm }) => sdMm[k])));
  const one = (k: 0 | 1): Across => ({
    mm: mm[k],
    sdMm: Math.hypot(own.sdMm[k], among[k] as number),
    borderDifference: borders?.[k] ?? null,
  });
  return {
    copy: [one(0), one(1)],
    nominal: sizeMm,
    others: known.map(({ frames }) => inMm(frames)),
  };
}

/** Card over frame, across and down, and what its doubt comes to in millimetres of the card. */
function framesOf({ frame }: FaceAnswer, [w, h]: SizeMm) {
  const [borders, sd] = [frame?.bordersMm, frame?.bordersSdMm];
  if (!borders || !sd) return null;
  const [wide, high] = [w - borders.left - borders.right, h - borders.top - borders.bottom];
  const frames: SizeMm = [w / wide, h / high];
  const sdMm: SizeMm = [
    frames[0] * Math.hypot(sd.left, sd.right),
    frames[1] * Math.hypot(sd.top, sd.bottom),
  ];
  return { frames, sdMm };
}

/** Left less right and top less bottom, against the references' own; null where a frame is missing. */
function differencesOf(copy: FaceAnswer, references: readonly FaceAnswer[]): SizeMm | null {
  const of = ({ frame }: { readonly frame: Frame | null }): readonly SizeMm[] => {
    const borders = frame?.bordersMm;
    return borders ? [[borders.left - borders.right, borders.top - borders.bottom]] : [];
  };
  const [own] = of(copy);
  const known = references.flatMap(of);
  if (!own || known.length === 0) return null;
  const usual = middleOf(known);
  return [own[0] - usual[0], own[1] - usual[1]];
}

function middleOf(sizes: readonly SizeMm[]): SizeMm {
  const mean = (k: 0 | 1) => sizes.reduce((sum, size) => sum + size[k], 0) / sizes.length;
  return [mean(0), mean(1)];
}
