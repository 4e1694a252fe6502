import { basename, join } from 'node:path';
import type { Corners, Outline, SizeMm } from '../../bench/index.ts';
import type { BenchComparison, BenchCopy, BenchRelief, BenchSide } from '../../contract/index.ts';
import type { CopyRow, Dossier } from '../../dossier/index.ts';
import { type CopyPhoto, type OtherExamination, shownSamples } from '../../host/index.ts';
import { Refused } from '../refusal.ts';
import type { Measurer } from './measurer.ts';
import { comparisonOnWire, reliefOnWire } from './on-wire.ts';
import { lampsSetupIn } from './setup.ts';
import type { BenchReply, BenchTask, FaceTask, OutlineTask, ReliefTask } from './tasks.ts';

/** What a view needs to know of a copy. */
export interface Viewed {
  readonly dossier: Dossier;
  readonly folder: string;
  readonly copy: CopyRow;
  readonly photos: readonly CopyPhoto[];
  /** The seller's own picture, by its name in the copy's folder. */
  readonly listing: string | undefined;
  readonly examinations: readonly OtherExamination[];
}

/** A part of the card in millimetres, from its upper left to its lower right corner. */
export type PartMm = readonly [x0: number, y0: number, x1: number, y1: number];

/** Pictures beside which a face can be laid: the seller's, other examinations', and references of the copy's printings. */
export function besideOf({ dossier, copy, listing, examinations }: Viewed): BenchCopy['beside'] {
  const own: BenchCopy['beside'] = listing
    ? [
        {
          ...{ file: `desk/photos/${copy.id}/${listing}`, side: 'front', what: 'listing' },
          words: 'the seller’s picture',
        },
      ]
    : [];
  const again = examinations.flatMap(({ name, photos }) =>
    photos
      .filter(({ light }) => light === 'still')
      .map((photo) => ({
        file: `desk/photos/${copy.id}/${name}/${photo.name}`,
        ...{ side: photo.side, what: 'examination' as const, words: `this copy in ${name}` },
      })),
  );
  const table = dossier.tables.get('pictures.csv');
  const printings = copy.printing.split('|').map((id) => id.trim());
  const references = [...(table?.rows() ?? [])].flatMap((row): BenchCopy['beside'] => {
    const cell = (column: string) => table?.value(row, column) ?? '';
    const side = cell('side') || 'front';
    if (cell('role') !== 'reference' || !printings.includes(cell('of'))) return [];
    if (side !== 'front' && side !== 'back') return [];
    const known = cell('known_by');
    const words = `reference ${basename(cell('file'))}${known ? `, known by ${known}` : ''}`;
    return [{ file: cell('file'), side, what: 'reference', words }];
  });
  return [...own, ...again, ...references];
}

/** Shows pictures beside and over each other in the millimetres of the card. */
export class Views {
  readonly #measurer: Measurer;
  readonly #stampOf: (file: string) => Promise<string>;
  readonly #outlines = new Map<string, Promise<Outline | null>>();

  constructor(measurer: Measurer, stampOf: (file: string) => Promise<string>) {
    this.#measurer = measurer;
    this.#stampOf = stampOf;
  }

  /** A picture of the copy, or one beside it, as seen straight down, or a part of it. */
  async straight(
    viewed: Viewed,
    of: string,
    width: number,
    part: PartMm | null,
  ): Promise<Uint8Array> {
    const file = this.#fileOf(viewed, of);
    const sizeMm = sizeOf(viewed);
    const stamp = await this.#stampOf(file);
    const outline = await this.#outlineOf(viewed, { do: 'outline', file, stamp, sizeMm });
    if (!outline) throw new Refused('not-found', `No sure outline was found on ${of}.`);
    const { corners, lens } = outline;
    return await this.cut(viewed, { file, corners, k1: lens.k1, sizeMm }, width, part);
  }

  /** The outline of a picture; the last ones are kept, since each part that is shown needs it. */
  async #outlineOf(viewed: Viewed, task: OutlineTask): Promise<Outline | null> {
    const key = JSON.stringify(task);
    const found =
      this.#outlines.get(key) ?? this.#run(viewed, task).then(({ outline }) => outline ?? null);
    this.#outlines.set(key, found);
    found.catch(() => this.#outlines.delete(key));
    for (const old of [...this.#outlines.keys()].slice(0, -OUTLINES_KEPT))
      this.#outlines.delete(old);
    return await found;
  }

  /** The card cut out of a picture along its corners. */
  async cut(
    viewed: Pick<Viewed, 'folder'>,
    card: { file: string; corners: Corners; k1: number; sizeMm: SizeMm },
    width: number,
    part: PartMm | null,
  ): Promise<Uint8Array> {
    const [x0, y0, x1, y1] = part ?? [0, 0, ...card.sizeMm];
    const { card: shown } = await this.#run(viewed, {
      ...{ do: 'card', ...card, stamp: await this.#stampOf(card.file) },
      ...{ from: [x0, y0], to: [x1, y1], width },
    });
    if (!shown) throw new Refused('failed', 'The card could not be shown.');
    return await shownSamples(shown, width);
  }

  /** What the pictures under a moved lamp say of a face. */
  async relief(viewed: Viewed, side: BenchSide): Promise<BenchRelief> {
    const { set, fault } = await this.#lampSet(viewed, side);
    const lamp = [0, 0, 1] as const;
    const { relief, card } = await this.#run(viewed, {
      ...{ do: 'relief', set, shade: { lamp, steeper: 1 } },
    });
    if (!relief) throw new Refused('failed', 'The relief could not be measured.');
    return reliefOnWire(relief, card !== undefined, fault);
  }

  /** The measured slopes of a face, shaded as a lamp at that azimuth and height (degrees) would. */
  async shaded(
    viewed: Viewed,
    side: BenchSide,
    lamp: { readonly azimuth: number; readonly height: number; readonly steeper: number },
  ): Promise<Uint8Array> {
    const { set } = await this.#lampSet(viewed, side);
    const turn = (lamp.azimuth * Math.PI) / 180;
    const rise = (lamp.height * Math.PI) / 180;
    const [across, up] = [Math.cos(rise), Math.sin(rise)];
    // Angles go counter-clockwise as the card is read, while its y runs down.
    const direction = [across * Math.cos(turn), -across * Math.sin(turn), up] as const;
    const { card } = await this.#run(viewed, {
      ...{ do: 'relief', set, shade: { lamp: direction, steeper: lamp.steeper } },
    });
    if (!card) throw new Refused('not-found', 'These pictures tell no slopes.');
    return await shownSamples(card, card.width);
  }

  /** A face beside a picture: one specimen with the seller's, one printing with references. */
  async compare(
    viewed: Viewed,
    own: FaceTask,
    side: BenchSide,
    of: string,
  ): Promise<BenchComparison> {
    const beside = besideOf(viewed);
    const chosen = beside.find(({ file }) => file === of);
    if (!chosen) throw new Refused('not-found', `${of} is no picture to compare with.`);
    const how = chosen.what === 'reference' ? 'references' : 'specimen';
    const all = beside.filter((one) => one.side === side && one.what === 'reference');
    const files = (how === 'specimen' ? [chosen] : all).map(({ file }) =>
      join(viewed.folder, file),
    );
    const others = await Promise.all(
      files.map(async (file) => ({ file, stamp: await this.#stampOf(file) })),
    );
    const sizeMm = sizeOf(viewed);
    const task: BenchTask = { do: 'compare', how, own, others, sizeMm };
    const { comparison, other } = await this.#run(viewed, task);
    if (!comparison) throw new Refused('failed', 'The pictures could not be compared.');
    return comparisonOnWire(comparison, other && { ...other, name: basename(of) });
  }

  #fileOf(viewed: Viewed, of: string): string {
    const photo = viewed.photos.find(({ name }) => name === of);
    if (photo) return join(viewed.folder, 'desk', 'photos', viewed.copy.id, photo.name);
    const beside = besideOf(viewed).find(({ file }) => file === of);
    if (beside && !/(^|\/)\.\.?(\/|$)|^\/|\\/.test(of)) return join(viewed.folder, beside.file);
    throw new Refused('not-found', `There is no picture ${of} of ${viewed.copy.id}.`);
  }

  async #lampSet(viewed: Viewed, side: BenchSide) {
    const folder = join(viewed.folder, 'desk', 'photos', viewed.copy.id);
    const { lamps, ball, fault } = await lampsSetupIn(folder);
    const names = viewed.photos
      .filter((one) => one.side === side && one.light === 'lamp')
      .map(({ name }) => name);
    if (names.length === 0)
      throw new Refused('not-found', `There are no pictures of the ${side} by lamps in turn.`);
    const pictures: ReliefTask['set']['pictures'] = await Promise.all(
      names.map(async (name) => {
        const file = join(folder, name);
        return { file, stamp: await this.#stampOf(file), lampMm: lamps.get(name) ?? null };
      }),
    );
    return { set: { pictures, ball, sizeMm: sizeOf(viewed) }, fault };
  }

  async #run({ folder }: Pick<Viewed, 'folder'>, task: BenchTask): Promise<BenchReply> {
    const reply = await this.#measurer.run(task);
    if (reply.fault) throw new Refused('bad-request', reply.fault.replaceAll(`${folder}/`, ''));
    return reply;
  }
}

const OUTLINES_KEPT = 32;

function sizeOf({ dossier }: Viewed): SizeMm {
  const { width_mm: width, height_mm: height } = dossier.manifest;
  if (width && height) return [width, height];
  throw new Refused(
    'bad-request',
    'Say how large the card is: width_mm and height_mm in dossier.json.',
  );
}
