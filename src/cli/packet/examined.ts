import { basename } from 'node:path';
import {
  type FaceAnswer,
  handsOf,
  type Picture,
  reportOf,
  weighedMarks,
} from '../../bench/index.ts';
import type { PacketFace, PacketGround } from '../../chronicle/index.ts';
import type { Dossier } from '../../dossier/index.ts';
import { PictureFault } from '../../host/index.ts';
import { measured } from '../examine/measure.ts';
import { copyFolder } from '../examine/of-copy.ts';
import { photosIn } from '../examine/photos.ts';
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
  const found = await copyFolder(folder, copy);
  if (found === null) return { faces: [], described: null, notes: [] };
  try {
    const { front, back, raking, extras } = await photosIn(found.folder);
    const hands = handsOf(dossier.documents.get(`desk/examinations/${copy}.json`));
    const of = (file: string | null) =>
      hands.marks.filter(
        ({ target }) => file !== null && basename(target.source) === basename(file),
      );
    const told = { ...found.told, annotations: { front: of(front), back: of(back) } };
    const job = {
      ...{ front, back, cardMm: found.cardMm, dpi: null },
      raking: raking.map((file) => ({ file, azimuthDeg: null })),
    };
    const one = await measured(job, { lamps: null, extras, told, say });
    const { marks, described } = reportOf(one.examination, told);
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
