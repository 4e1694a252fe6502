import { basename } from 'node:path';
import { type FaceAnswer, type Picture, weighedMarks } from '../../bench/index.ts';
import type { PacketFace, PacketGround } from '../../chronicle/index.ts';
import type { Dossier } from '../../dossier/index.ts';
import { PictureFault } from '../../host/index.ts';
import { measured } from '../examine/measure.ts';
import { copyIn } from '../examine/of-copy.ts';
import { drawnFindings } from '../findings/write.ts';
import { WrongCall } from '../wrong-call.ts';

/** What measuring a copy's pictures gives a packet, with what hands set on them. */
export type Examined = Pick<PacketGround, 'faces' | 'described'> & {
  /** Why nothing was measured, and what the pictures' taker should know. */
  readonly notes: readonly string[];
};

/** Measures a copy; a face whose picture is marked to stay is not drawn. Without a picture that can be measured there are no faces. */
export async function examined(
  folder: string,
  copy: string,
  dossier: Dossier,
  stay: readonly string[],
  say: (what: string, share: number) => void,
): Promise<Examined> {
  try {
    const { photos, cardMm, told, byHand } = await copyIn(folder, dossier, copy);
    const { front, back, raking, extras } = photos;
    const job = {
      ...{ front, back, cardMm, dpi: null },
      raking: raking.map((file) => ({ file, azimuthDeg: null })),
    };
    const one = await measured(job, { lamps: null, extras, told, byHand, say });
    const { marks, described } = one;
    const shown = (file: string | null) =>
      file !== null && !stay.includes(`desk/photos/${copy}/${basename(file)}`);
    const faces = [
      await faceFor('front', one.examination.front, marks.front, shown(front) ? one.front : null),
    ];
    if (one.back && one.examination.back) {
      const picture = shown(back) ? one.back : null;
      faces.push(await faceFor('back', one.examination.back, marks.back, picture));
    }
    return { faces, described, notes: one.notes };
  } catch (error) {
    if (!(error instanceof WrongCall || error instanceof PictureFault)) throw error;
    return { faces: [], described: null, notes: [error.message] };
  }
}

async function faceFor(
  side: PacketFace['side'],
  face: FaceAnswer,
  marks: PacketFace['marks'],
  picture: Picture | null,
): Promise<PacketFace> {
  const drawing =
    picture && (await drawnFindings(side, { ...face, defects: weighedMarks(marks) }, picture));
  return { side, drawing, marks, whyNot: face.whyNot };
}
