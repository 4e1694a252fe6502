import { copyFileSync, mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { afterAll, describe, expect, it } from 'vitest';
import { answerTo } from './answer.ts';

const made = fileURLToPath(new URL('../fixtures/bench/pictures/scan-bronze-300/', import.meta.url));
const truth = JSON.parse(readFileSync(join(made, 'truth.json'), 'utf8'));
const dossier = mkdtempSync(join(tmpdir(), 'printlore-hands-'));
afterAll(() => rmSync(dossier, { recursive: true }));
const [photos, kept] = ['photos/bronze-1', 'examinations'].map((name) =>
  join(dossier, 'desk', name),
) as [string, string];
for (const each of [photos, kept]) mkdirSync(each, { recursive: true });
writeFileSync(join(dossier, 'printings.csv'), 'id\nbronze\n');
writeFileSync(join(dossier, 'dossier.json'), '{"format":1,"width_mm":63,"height_mm":88}');
copyFileSync(join(made, 'front.jpg'), join(photos, 'front.jpg'));
const keep = (examination: object) =>
  writeFileSync(join(kept, 'bronze-1.json'), JSON.stringify(examination));

describe('examine with what hands set', () => {
  it('measures along the corners that a hand set, counts hand marks, and keeps them apart', async () => {
    // Three pixels to the right: the left border narrows by as much.
    const moved = truth.outline.map(([x, y]: [number, number]) => [x + 3, y]);
    const [[x, y]] = truth.outline;
    const scratch = {
      ...{ id: 'urn:uuid:1', type: 'Annotation', motivation: 'tagging' },
      body: [
        { type: 'TextualBody', purpose: 'tagging', value: 'scratch' },
        { type: 'TextualBody', purpose: 'commenting', value: 'seen by loupe' },
      ],
      target: {
        source: 'desk/photos/bronze-1/front.jpg',
        selector: {
          type: 'SvgSelector',
          value: `<svg xmlns="http://www.w3.org/2000/svg"><polyline points="${x + 200},${y + 300} ${x + 200},${y + 418}"/></svg>`,
        },
      },
    };
    const words = ['examine', dossier, '--copy', 'bronze-1'];
    const plain = JSON.parse((await answerTo([...words, '--json'])).out);
    keep({ hand: { front: moved }, marks: [scratch] });
    const { front, grade } = JSON.parse((await answerTo([...words, '--json'])).out);
    expect(front.outline).toEqual(moved);
    expect(plain.front.by_hand).toBeUndefined();
    expect(front.by_hand).toMatchObject({
      ...{ outline: true, frame: false },
      marks: [{ from: 'hand', state: 'confirmed', words: ['seen by loupe'], kind: 'scratch' }],
    });
    // 118 px at 300 dpi, as drawn.
    expect(front.by_hand.marks[0].length_mm).toBeCloseTo((118 * 25.4) / 300, 1);
    const narrower = plain.front.borders_mm.left - front.borders_mm.left;
    // Measured 0.002 mm, allowed 0.05.
    expect(Math.abs(narrower - (3 * 25.4) / 300)).toBeLessThan(0.05);
    expect(grade.p).not.toEqual(plain.grade.p);
    const { out } = await answerTo(words);
    expect(out).toMatch(/^outline +set by hand/m);
    expect(out).toContain('By hand: scratch at');
    keep({ hand: { front: [...moved].reverse() } });
    const crossed = await answerTo(words);
    expect(crossed.exit).toBe(2);
    expect(crossed.err).toContain('desk/examinations/bronze-1.json: hand.front must be');
  });
});
