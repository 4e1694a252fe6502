import { describe, expect, it } from 'vitest';
import type { FaceAnswer } from '../examine/types.ts';
import type { Frame } from '../frame/types.ts';
import { signsAgainst } from './signs-against.ts';

const SIZE = [63, 88] as const;
type Borders = Frame['bordersMm'];

/** A photograph's face whose borders were measured at the size told. */
function faceOf(bordersMm: NonNullable<Borders>): FaceAnswer {
  const sd = { left: 0.03, right: 0.03, top: 0.03, bottom: 0.03 };
  return {
    outline: null,
    hypotheses: [],
    trouble: null,
    size: { mm: SIZE, sdMm: null, from: 'told' },
    frame: { bordersMm, bordersSdMm: sd } as Frame,
    defects: [],
    limits: [],
    tipRadiusMm: null,
    rim: null,
    looks: ['photo'],
    whyNot: null,
  };
}
const whole = faceOf({ left: 3.5, right: 3.3, top: 4, bottom: 4.2 });
const other = faceOf({ left: 3.2, right: 3.6, top: 4.1, bottom: 4.1 });
/** The same card with 0.8 mm off its right side, stretched back to the size told. */
const stretch = 63 / 62.2;
const cut = faceOf({ left: 3.5 * stretch, right: 2.5 * stretch, top: 4, bottom: 4.2 });
const widthOf = (copy: FaceAnswer, references: readonly FaceAnswer[]) =>
  signsAgainst(copy, references, SIZE)[0]?.findings[0];

describe('signs against references', () => {
  it('measures a cut by the printed frame where no dots an inch are known', () => {
    const width = widthOf(cut, [whole, other]);
    // 62.2 mm in frames of 56.2: the stretch drops out, measured −0.80.
    expect(Math.abs((width?.difference ?? 0) + 0.8)).toBeLessThan(0.02);
    expect(width?.log10Lr ?? 0).toBeGreaterThan(widthOf(other, [whole, whole])?.log10Lr ?? 9);
  });

  it('says nothing for a cut of a copy that is as its references, and nothing at all without a frame', () => {
    expect(widthOf(whole, [whole, other])?.log10Lr ?? 9).toBeLessThan(0);
    expect(signsAgainst({ ...cut, frame: null }, [whole], SIZE)).toEqual([]);
    expect(signsAgainst(cut, [{ ...whole, frame: null }], SIZE)).toEqual([]);
  });

  it('takes scans by their dots an inch', () => {
    const scan = (mm: readonly [number, number]): FaceAnswer => ({
      ...whole,
      size: { mm, sdMm: [0.05, 0.05], from: 'dpi' },
    });
    const [sign] = signsAgainst(scan([62.3, 88]), [scan([63, 88]), scan([63.04, 88.02])], SIZE);
    expect(sign?.findings[0]?.difference).toBeCloseTo(62.3 - 63.02, 9);
    expect(sign?.of).toBe('trimmed');
  });
});
