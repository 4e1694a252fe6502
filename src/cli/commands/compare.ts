import {
  type Comparison,
  cardAlone,
  compareSpecimens,
  compareWithReferences,
  type FaceAnswer,
  faceOf,
  marksAgainst,
  type Picture,
  type PrintProcess,
  printProcessOf,
  type Seen,
  type SizeMm,
  seenAt,
  signsAgainst,
} from '../../bench/index.ts';
import { correctionIn } from '../chart-colours.ts';
import { type ChartFile, chartIn } from '../chart-file.ts';
import { defectJson, findingJson, signJson } from '../examine/answer.ts';
import { cardIn, dpiOf } from '../examine/job.ts';
import { writeJson } from '../json.ts';
import { pictureIn } from '../picture.ts';
import { type Compared, comparisonReport } from '../report/comparison.ts';
import { refuseSamePicture } from '../same-picture.ts';
import type { Terminal } from '../terminal.ts';
import { WrongCall } from '../wrong-call.ts';

/** What `compare` was called with. */
export interface CompareOptions {
  readonly with?: readonly string[];
  readonly other?: readonly string[];
  readonly specimen?: boolean;
  readonly card?: string;
  readonly chart?: string;
  readonly dpi?: number;
  readonly json?: boolean;
}

/** A size that is taken where none is told: only millimetres depend on it. Common practice, no source. */
const USUAL_HEIGHT_MM = 88;

/** Compares a copy with references, or two pictures for being of one specimen; 1 where nothing could be compared. */
export async function compare(
  files: readonly string[],
  options: CompareOptions,
  terminal: Terminal,
): Promise<0 | 1> {
  const { with: against = [] } = options;
  if (against.length === 0) throw new WrongCall('Name what to compare with: --with PICTURE.');
  if (options.specimen && (files.length !== 1 || against.length !== 1))
    throw new WrongCall('For one specimen compare one picture with one: PICTURE --with PICTURE.');
  if (options.specimen && options.chart !== undefined)
    throw new WrongCall('For one specimen no colours are compared: leave out --chart.');
  await refuseSamePicture([...files, ...against, ...(options.other ?? [])]);
  const comparison = options.specimen
    ? await ofOneSpecimen(files, against, options)
    : await withReferences(files, against, options);
  if (options.json) await writeJson(answerOf(comparison), terminal);
  else await terminal.write(comparisonReport(comparison, terminal.width));
  return comparison.registered || comparison.findings.length > 0 ? 0 : 1;
}

async function ofOneSpecimen(
  files: readonly string[],
  against: readonly string[],
  options: CompareOptions,
): Promise<Compared> {
  const [copy] = facesIn(await allSeen(files, options));
  const [again] = facesIn(await allSeen(against, options));
  const others = facesIn(await allSeen(options.other ?? [], options));
  if (!copy || !again)
    throw new WrongCall('Whether two pictures show one specimen is told by whole faces.');
  return { ...compareSpecimens(copy, again, others, copy.map.sizeMm), signs: [], marks: [] };
}

async function withReferences(
  files: readonly string[],
  against: readonly string[],
  options: CompareOptions,
): Promise<Compared> {
  const chart = options.chart === undefined ? null : await gridIn(options.chart);
  const copies = await allSeen(files, options, chart);
  const references = await allSeen(against, options, chart);
  const prints = { copy: printsIn(copies), references: printsIn(references) };
  const faces = facesIn(copies);
  const others = facesIn(references);
  const sizeMm = (faces[0] ?? others[0])?.map.sizeMm ?? PIECES_MM;
  const each = faces.length > 0 && others.length > 0 ? faces : [null];
  const found = each.map((copy) => compareWithReferences(copy, others, sizeMm, prints));
  const best = strongest(found);
  const copy = best.registered ? each[found.indexOf(best)] : null;
  const own = copies.find(({ face }) => face === copy)?.measured;
  const known = references.flatMap(({ measured }) => measured ?? []);
  const unlit = [...copies, ...references].flatMap(({ unlit }) => unlit ?? []);
  return {
    ...best,
    cautions: [...best.cautions, ...unlit],
    signs: copy && own ? signsAgainst(own, known, sizeMm) : [],
    marks: copy ? marksAgainst(copy, others, sizeMm) : [],
  };
}

/** Of several pictures of one copy, the comparison that lies best: they are no further evidence. */
function strongest(comparisons: readonly Comparison[]): Comparison {
  const sorted = [...comparisons].sort(
    (a, b) => Number(b.registered) - Number(a.registered) || a.log10Lr - b.log10Lr,
  );
  return sorted[0] as Comparison;
}

/** What a picture gave: a face where it shows a whole one, the print process where it is fine enough. */
interface Shown {
  readonly face: Seen | null;
  readonly measured: FaceAnswer | null;
  readonly print: PrintProcess | null;
  /** Why the chart that was told corrects nothing here. */
  readonly unlit: string | null;
}

const facesIn = (all: readonly Shown[]) => all.flatMap(({ face }) => face ?? []);
const printsIn = (all: readonly Shown[]) => all.flatMap(({ print }) => print ?? []);

/** A scan whose longer side is shorter is of a piece, and no outline is looked for in it. */
const PIECE_MM = 50;
/** Stands in where no face is compared, so that no millimetre depends on it. */
const PIECES_MM: SizeMm = [63, 88];

async function allSeen(
  files: readonly string[],
  options: CompareOptions,
  chart: ChartFile | null = null,
): Promise<readonly Shown[]> {
  const seen: Shown[] = [];
  for (const file of files) seen.push(await seenIn(file, options, chart));
  return seen;
}

async function seenIn(
  file: string,
  options: CompareOptions,
  chart: ChartFile | null,
): Promise<Shown> {
  const told = options.card === undefined ? null : cardIn(options.card);
  const { picture } = await pictureIn(file);
  const dpi = options.dpi === undefined ? picture.dpi : dpiOf(options.dpi);
  const longer = Math.max(picture.width, picture.height);
  if (dpi !== null && (longer / dpi) * 25.4 < PIECE_MM) {
    const print = printProcessOf(picture, dpi);
    if ('why' in print) throw new WrongCall(`${file}: ${print.why}`);
    return { face: null, measured: null, print, unlit: null };
  }
  const { face, measured } = faceIn(file, picture, told, dpi);
  const print = printProcessOf(cardAlone(picture, face.map.corners), dpi);
  const correction = chart && correctionIn(picture, chart);
  const corrected = correction && !('why' in correction) ? { chart: correction } : {};
  const unlit = correction && 'why' in correction ? `${file}: ${correction.why}` : null;
  const shown = { measured, print: 'why' in print ? null : print, unlit };
  return { face: { ...face, ...corrected }, ...shown };
}

/** A chart whose places are looked for in each picture. */
async function gridIn(file: string): Promise<ChartFile> {
  const chart = await chartIn(file);
  if (chart.columns !== null) return chart;
  throw new WrongCall(
    `${file}: the chart is looked for in each picture; leave out "centre_px" and "size_px", and say in how many "columns" its patches stand.`,
  );
}

function faceIn(
  file: string,
  picture: Picture,
  told: SizeMm | null,
  dpi: number | null,
): { readonly face: Seen; readonly measured: FaceAnswer } {
  const known = { sizeMm: told, dpi, raking: [] };
  const face = faceOf(picture, known);
  const { outline, trouble, whyNot } = face;
  if (!outline || trouble)
    throw new WrongCall(`${file}: ${whyNot ?? 'no outline of a card was found.'}`);
  const sizeMm: SizeMm =
    outline.sizeMm ?? ([outline.aspect * USUAL_HEIGHT_MM, USUAL_HEIGHT_MM] as const);
  return { face: seenAt(picture, outline, face, sizeMm), measured: face };
}

/** A comparison as `compare --json` prints it. */
function answerOf({
  registered,
  findings,
  log10Lr,
  between,
  words,
  cautions,
  signs,
  marks,
}: Compared): object {
  return {
    registered,
    findings: findings.map(findingJson),
    log10_lr: log10Lr,
    between,
    words,
    cautions,
    signs: signs.map(signJson),
    marks: marks.map(({ mark, alone, shown }) => ({ ...defectJson(mark), p_alone: alone, shown })),
  };
}
