import { stat } from 'node:fs/promises';
import { join } from 'node:path';
import {
  type Annotation,
  annotationsOn,
  type FaceAnswer,
  type Hands,
  handsOf,
  reportOf,
  withHands,
} from '../../bench/index.ts';
import type {
  BenchBorders,
  BenchComparison,
  BenchCopy,
  BenchKept,
  BenchList,
  BenchMarkRequest,
  BenchMoved,
  BenchOutline,
  BenchProgress,
  BenchRelief,
  BenchSide,
} from '../../contract/index.ts';
import { conditionWordsOf, copiesOf, deadlinesOf, gradeSettingOf } from '../../dossier/index.ts';
import { dayFrom } from '../../evidence/index.ts';
import {
  type CopyPhoto,
  examinationsOf,
  keepPhoto,
  listingOf,
  now,
  type PartPx,
  PhotoThere,
  PictureFault,
  photosOf,
  shownPicture,
} from '../../host/index.ts';
import { clockOf } from '../../market/index.ts';
import { Refused } from '../refusal.ts';
import type { Session } from '../session.ts';
import { annotationOf, type MarkMade } from './annotations.ts';
import { handOn, handsWith, NO_HAND } from './hand.ts';
import type { Measurer } from './measurer.ts';
import { bordersOnWire, clockOnWire, faceOnWire, reportOnWire } from './on-wire.ts';
import type { FaceTask, HandSet } from './tasks.ts';
import { besideOf, type PartMm, type Viewed, Views } from './views.ts';

/** A face that was measured, and what it was measured from. */
interface Measured {
  readonly photo: CopyPhoto;
  readonly face: FaceAnswer;
  readonly size: readonly [number, number];
  readonly hand: HandSet;
}

interface Found extends Viewed {
  readonly hands: Hands;
}

/** The bench: measures the copies of the open dossier from the pictures on the desk. */
export class Bench {
  readonly #session: Session;
  readonly #measurer: Measurer;
  /** For what must follow a moving hand at once, whatever else is being measured. */
  readonly #follower: Measurer;
  readonly #views: Views;
  /** Faces as last measured, by all that they were measured from. */
  readonly #faces = new Map<string, Promise<Measured>>();
  /** The faces of each copy that is being measured now, and how many of them are done. */
  readonly #doing = new Map<string, BenchProgress>();

  constructor(session: Session, measurer: Measurer, follower: Measurer) {
    this.#session = session;
    this.#measurer = measurer;
    this.#follower = follower;
    this.#views = new Views(measurer, stampOf);
  }

  /** The copies, and the pictures that there are of each. */
  async list(): Promise<BenchList> {
    const { dossier, opened } = await this.#session.shown();
    const copies = copiesOf(dossier).map(async ({ id, printing, status }) => ({
      ...{ id, printing, status },
      pictures: [...(await photosOf(opened.folder, id))],
    }));
    return { copies: await Promise.all(copies) };
  }

  /** One copy, measured. */
  async copy(id: string): Promise<BenchCopy> {
    const found = await this.#find(id);
    return await this.#told(found, found.hands);
  }

  /** Size, borders and centering along what a hand moves just now; marks are not looked for. */
  async borders(id: string, { side, corners, frame }: BenchMoved): Promise<BenchBorders> {
    const found = await this.#find(id);
    const { task } = await this.#faceTask(found, side, { ...NO_HAND, corners, frame });
    const { file, stamp, known } = task;
    const outline = corners ?? (await this.#measure(found, side, NO_HAND)).face.outline;
    if (!outline) throw new Refused('bad-request', 'Set the outline first.');
    const { borders, fault } = await this.#follower.run({
      ...{ do: 'borders', file, stamp, known, outline, frame },
    });
    if (!borders)
      throw new Refused('bad-request', within(found.folder, fault ?? 'It was not measured.'));
    return bordersOnWire(borders, frame !== null);
  }

  /** What follows from what a hand moved, and keeps it where that is wanted. */
  async outline(id: string, { side, keep, ...hand }: BenchOutline): Promise<BenchCopy> {
    const found = await this.#find(id);
    const { face } = hand.refine ? await this.#measure(found, side, hand) : { face: null };
    const corners = hand.corners && (face?.outline?.corners ?? hand.corners);
    const frame = hand.frame && (face?.frame?.corners ?? hand.frame);
    const moved = handsWith(found.hands, side, { corners, frame });
    if (keep) await this.#keep(found, `Move the outline of ${id}, ${side}`, moved);
    return await this.#told(found, moved);
  }

  /** Adds or judges a mark, or takes an annotation away. */
  async mark(id: string, request: BenchMarkRequest): Promise<BenchCopy> {
    const found = await this.#find(id);
    const { marks } = found.hands;
    const changed: readonly Annotation[] =
      request.do === 'remove'
        ? marks.filter((one) => !request.annotations.includes(one.id))
        : [...marks, await this.#annotation(found, request)];
    const hands = { ...found.hands, marks: changed };
    await this.#keep(found, `${LABELS[request.do]} ${id}`, hands);
    return await this.#told(found, hands);
  }

  /** A picture of a copy, or a part of it, for showing. */
  async picture(id: string, name: string, width: number, part: PartPx | null): Promise<Uint8Array> {
    const { folder, photos } = await this.#find(id);
    const photo = photos.find((one) => one.name === name);
    if (!photo) throw new Refused('not-found', `There is no picture ${name} of ${id}.`);
    return await shownPicture(fileOf(folder, id, photo), width, part).catch((error: Error) => {
      if (!(error instanceof PictureFault || error instanceof RangeError)) throw error;
      throw new Refused('bad-request', within(folder, error.message));
    });
  }

  /** Keeps a picture of a copy as it came; none that is there is written over. */
  async keepPicture(id: string, role: string, bytes: Uint8Array): Promise<BenchKept> {
    const { folder } = await this.#find(id);
    try {
      return { name: await keepPhoto(folder, id, role, bytes) };
    } catch (error) {
      if (error instanceof PhotoThere) {
        const words = `${error.message} is there already; originals are never written over.`;
        throw new Refused('already-there', words);
      }
      if (error instanceof PictureFault || error instanceof RangeError)
        throw new Refused('bad-request', error.message);
      throw error;
    }
  }

  /** How far the measuring of a copy has come; all of it done where none is going on. */
  progress(id: string): BenchProgress {
    return this.#doing.get(id) ?? { done: 0, of: 0, now: '' };
  }

  /** The card as seen straight down, or a part of it in millimetres, for showing. */
  async card(id: string, side: BenchSide, width: number, part: PartMm | null): Promise<Uint8Array> {
    const found = await this.#find(id);
    const { face, photo } = await this.#measure(found, side, handOn(found.hands, side));
    const { outline } = face;
    if (!outline?.sizeMm)
      throw new Refused('not-found', `No outline of known size was found on ${photo.name}.`);
    const { corners, lens, sizeMm } = outline;
    const file = fileOf(found.folder, id, photo);
    return await this.#views.cut(found, { file, corners, k1: lens.k1, sizeMm }, width, part);
  }

  /** Another picture of the copy, or one beside it, as seen straight down. */
  async straight(id: string, of: string, width: number, part: PartMm | null): Promise<Uint8Array> {
    return await this.#views.straight(await this.#find(id), of, width, part);
  }

  /** What the pictures under a moved lamp say of a face. */
  async relief(id: string, side: BenchSide): Promise<BenchRelief> {
    return await this.#views.relief(await this.#find(id), side);
  }

  /** The relief of a face under a lamp at that azimuth and height, in degrees. */
  async shaded(
    id: string,
    side: BenchSide,
    lamp: { readonly azimuth: number; readonly height: number; readonly steeper: number },
  ): Promise<Uint8Array> {
    return await this.#views.shaded(await this.#find(id), side, lamp);
  }

  /** A face compared with a picture beside it. */
  async compare(id: string, side: BenchSide, of: string): Promise<BenchComparison> {
    const found = await this.#find(id);
    const { task } = await this.#faceTask(found, side, handOn(found.hands, side));
    return await this.#views.compare(found, task, side, of);
  }

  async #find(id: string): Promise<Found> {
    const { dossier, opened } = await this.#session.shown();
    const copy = copiesOf(dossier).find((row) => row.id === id);
    if (!copy) throw new Refused('not-found', `There is no copy ${id} in this dossier.`);
    const hands = handsOf(dossier.documents.get(`desk/examinations/${id}.json`));
    return {
      ...{ dossier, copy, hands, folder: opened.folder },
      photos: await photosOf(opened.folder, id),
      listing: await listingOf(opened.folder, id),
      examinations: await examinationsOf(opened.folder, id),
    };
  }

  async #told(found: Found, hands: Hands): Promise<BenchCopy> {
    const { copy, dossier, photos } = found;
    const [front, back] = await this.#bothFaces(found, hands);
    const setting = gradeSettingOf(dossier, copy);
    const told = {
      annotations: { front: marksOn(hands, front), back: marksOn(hands, back) },
      ...{ listing: copy.listing, words: conditionWordsOf(dossier), setting },
    };
    const report = front ? reportOf({ front: front.face, back: back?.face ?? null }, told) : null;
    const today = dayFrom(now().slice(0, 10));
    return {
      ...{ id: copy.id, printing: copy.printing, status: copy.status, bought: copy.bought },
      listing: copy.listing,
      pictures: [...photos],
      beside: besideOf(found),
      front: front && faceOnWire(front.face, report?.marks.front ?? [], wireOf(front)),
      back: back && faceOnWire(back.face, report?.marks.back ?? [], wireOf(back)),
      ...(report ? reportOnWire(report, setting) : { grade: null, described: null }),
      clock: clockOnWire(clockOf(deadlinesOf(dossier), copy, today)),
    };
  }

  async #bothFaces(found: Found, hands: Hands) {
    const { id } = found.copy;
    const stills = found.photos.filter(({ light }) => light === 'still');
    const faces: (Measured | null)[] = [];
    try {
      for (const side of ['front', 'back'] as const) {
        const now = stills.find((one) => one.side === side)?.name ?? '';
        const done = faces.filter((face) => face !== null).length;
        this.#doing.set(id, { done, of: stills.length, now });
        faces.push(await this.#faceOrNone(found, side, hands));
      }
    } finally {
      this.#doing.delete(id);
    }
    return [faces[0] ?? null, faces[1] ?? null] as const;
  }

  async #faceOrNone(found: Found, side: BenchSide, hands: Hands): Promise<Measured | null> {
    const photo = found.photos.find((one) => one.side === side && one.light === 'still');
    if (!photo) return null;
    return await this.#measure(found, side, handOn(hands, side)).catch((error: unknown) => {
      if (!(error instanceof Refused)) throw error;
      // What is wrong with one picture takes nothing from the other.
      return {
        photo,
        face: { ...UNREAD, whyNot: error.message },
        size: [1, 1] as const,
        hand: NO_HAND,
      };
    });
  }

  async #faceTask(found: Found, side: BenchSide, hand: HandSet) {
    const { folder, copy, photos, dossier } = found;
    const photo = photos.find((one) => one.side === side && one.light === 'still');
    if (!photo) throw new Refused('not-found', `There is no picture of the ${side} of ${copy.id}.`);
    const { width_mm: width, height_mm: height } = dossier.manifest;
    const file = fileOf(folder, copy.id, photo);
    const raking = photos
      .filter((one) => one.side === side && one.light === 'raking')
      .map((one) => fileOf(folder, copy.id, one));
    const task: FaceTask = {
      do: 'face',
      ...{ file, stamp: await stampOf(file), raking, hand },
      known: { sizeMm: width && height ? [width, height] : null, dpi: null },
    };
    return { task, photo };
  }

  async #measure(found: Found, side: BenchSide, hand: HandSet): Promise<Measured> {
    const { folder } = found;
    const { task, photo } = await this.#faceTask(found, side, hand);
    const key = JSON.stringify(task);
    const known = this.#faces.get(key);
    if (known) return await known;
    const measured = this.#measurer.run(task).then(({ face, size, fault }): Measured => {
      if (!face) throw new Refused('bad-request', within(folder, fault ?? 'It was not measured.'));
      return { photo, face, size, hand };
    });
    this.#faces.set(key, measured);
    measured.catch(() => this.#faces.delete(key));
    for (const old of [...this.#faces.keys()].slice(0, -MEASURED_KEPT)) this.#faces.delete(old);
    return await measured;
  }

  async #keep({ copy, dossier, folder }: Found, label: string, hands: Hands): Promise<void> {
    const document = dossier.documents.get(`desk/examinations/${copy.id}.json`);
    await this.#session.keepExamination(label, folder, copy.id, withHands(document, hands));
  }

  async #annotation(found: Found, request: MarkMade): Promise<Annotation> {
    const { side } = request;
    const { face, photo } = await this.#measure(found, side, handOn(found.hands, side));
    const source = `desk/photos/${found.copy.id}/${photo.name}`;
    return annotationOf(request, face.outline, source);
  }
}

const LABELS = {
  add: 'Add a mark to',
  judge: 'Judge a mark on',
  remove: 'Take a mark from',
} as const;
const MEASURED_KEPT = 24;
const UNREAD: FaceAnswer = {
  ...{ outline: null, hypotheses: [], trouble: null, size: null, frame: null },
  ...{ defects: [], limits: [], tipRadiusMm: null, rim: null, looks: [], whyNot: null },
};

/** A sentence about a file, told by its name within the dossier. */
function within(folder: string, sentence: string): string {
  return sentence.replaceAll(`${folder}/`, '');
}

function fileOf(folder: string, copy: string, { name }: CopyPhoto): string {
  return join(folder, 'desk', 'photos', copy, name);
}

async function stampOf(file: string): Promise<string> {
  const { mtimeMs, size } = await stat(file);
  return `${mtimeMs} ${size}`;
}

function wireOf({ photo, size, hand }: Measured) {
  return { name: photo.name, size, hand };
}

function marksOn(hands: Hands, measured: Measured | null): readonly Annotation[] {
  return measured ? annotationsOn(hands, measured.photo.name) : [];
}
