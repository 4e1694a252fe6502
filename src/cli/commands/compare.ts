import {
  type Comparison,
  cardMapOf,
  compareSpecimens,
  compareWithReferences,
  faceOf,
  type Seen,
  type SizeMm,
} from '../../bench/index.ts';
import { cardIn, dpiOf } from '../examine/job.ts';
import { writeJson } from '../json.ts';
import { pictureIn } from '../picture.ts';
import { comparisonReport } from '../report/comparison.ts';
import type { Terminal } from '../terminal.ts';
import { WrongCall } from '../wrong-call.ts';

/** What `compare` was called with. */
export interface CompareOptions {
  readonly with?: readonly string[];
  readonly other?: readonly string[];
  readonly specimen?: boolean;
  readonly card?: string;
  readonly dpi?: number;
  readonly json?: boolean;
}

/** A size that is taken where none is told: only millimetres depend on it. Common practice, no source. */
const USUAL_HEIGHT_MM = 88;

/** Compares a copy with references, or two pictures for being of one specimen; 1 where the prints do not lie on each other. */
export async function compare(
  files: readonly string[],
  options: CompareOptions,
  terminal: Terminal,
): Promise<0 | 1> {
  const { with: against = [], other = [] } = options;
  if (against.length === 0) throw new WrongCall('Name what to compare with: --with PICTURE.');
  if (options.specimen && (files.length !== 1 || against.length !== 1))
    throw new WrongCall('For one specimen compare one picture with one: PICTURE --with PICTURE.');
  const copies = await allSeen(files, options);
  const others = await allSeen(against, options);
  const sizeMm = (copies[0] as Seen).map.sizeMm;
  const comparison = options.specimen
    ? compareSpecimens(copies[0] as Seen, others[0] as Seen, await allSeen(other, options), sizeMm)
    : strongest(copies.map((copy) => compareWithReferences(copy, others, sizeMm)));
  if (options.json) await writeJson(answerOf(comparison), terminal);
  else await terminal.write(comparisonReport(comparison, terminal.width));
  return comparison.registered ? 0 : 1;
}

/** Of several pictures of one copy, the comparison that lies best: they are no further evidence. */
function strongest(comparisons: readonly Comparison[]): Comparison {
  const sorted = [...comparisons].sort(
    (a, b) => Number(b.registered) - Number(a.registered) || a.log10Lr - b.log10Lr,
  );
  return sorted[0] as Comparison;
}

async function allSeen(
  files: readonly string[],
  options: CompareOptions,
): Promise<readonly Seen[]> {
  const seen: Seen[] = [];
  for (const file of files) seen.push(await seenIn(file, options));
  return seen;
}

async function seenIn(file: string, options: CompareOptions): Promise<Seen> {
  const told = options.card === undefined ? null : cardIn(options.card);
  const { picture } = await pictureIn(file);
  const dpi = options.dpi === undefined ? picture.dpi : dpiOf(options.dpi);
  const known = { sizeMm: told, dpi, raking: [] };
  const { outline, trouble, whyNot, size, defects } = faceOf(picture, known);
  if (!outline || trouble)
    throw new WrongCall(`${file}: ${whyNot ?? 'no outline of a card was found.'}`);
  const sizeMm: SizeMm =
    outline.sizeMm ?? ([outline.aspect * USUAL_HEIGHT_MM, USUAL_HEIGHT_MM] as const);
  const map = cardMapOf(outline.corners, sizeMm, outline.lens);
  const [x0, y0] = outline.corners[0];
  const [x1, y1] = outline.corners[1];
  const pxPerMm = Math.hypot(x1 - x0, y1 - y0) / sizeMm[0];
  const variances = Array.from({ length: 8 }, (_, i) => outline.covariance[i * 9 + i] as number);
  const sdPx = Math.sqrt(variances.reduce((a, b) => a + b, 0) / 8);
  const measured =
    size?.from === 'dpi' && size.sdMm ? { mm: size.mm, sd: Math.max(...size.sdMm) } : null;
  return { picture, map, cornerSdMm: sdPx / pxPerMm, measured, defects };
}

/** A comparison as `compare --json` prints it. */
function answerOf({ registered, findings, log10Lr, between, words, cautions }: Comparison): object {
  return {
    registered,
    findings: findings.map(({ what, whereMm, difference, sd, log10Lr: own }) => ({
      what,
      where_mm: whereMm,
      difference,
      sd,
      log10_lr: own,
    })),
    log10_lr: log10Lr,
    between,
    words,
    cautions,
  };
}
