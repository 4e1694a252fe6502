import type { BenchCopy, BenchFace, BenchMark, BenchSide } from '../../contract/index.ts';
import { dayFrom, sayDay, sayList } from '../../evidence/index.ts';
import { capital, count } from '../words/index.ts';

/** A kind of mark as a person writes it: `corner wear`. */
export function kindName(kind: string): string {
  return kind.replaceAll('-', ' ');
}

/** Length of a long mark, else its area, with the unit. */
export function saySize({ length, area }: Pick<BenchMark, 'length' | 'area'>): string {
  if (length !== null) return `${length.toFixed(1)} mm`;
  return area > 0 ? `${area.toFixed(2)} mm²` : '';
}

/** Where on the card a mark lies: `upper right`, `middle left`, `middle`. */
export function whereOn(
  [x, y]: readonly [number, number],
  [w, h]: readonly [number, number],
): string {
  const third = (at: number, names: readonly [string, string, string]) =>
    names[at < 1 / 3 ? 0 : at < 2 / 3 ? 1 : 2];
  const across = third(x / w, ['left', '', 'right']);
  return `${third(y / h, ['upper', 'middle', 'lower'])} ${across}`.trim();
}

const LIGHTS = { still: 'the picture as it is', raking: 'raking light', lamps: 'lamps in turn' };

/** The light that showed a mark, or the hand that set it. */
export function shownBy({ from, seenFrom }: Pick<BenchMark, 'from' | 'seenFrom'>): string {
  return from === 'hand' ? 'set by hand' : LIGHTS[seenFrom];
}

/** Both faces that there are. */
export function facesOf({ front, back }: Pick<BenchCopy, 'front' | 'back'>) {
  const faces: (readonly [BenchSide, BenchFace])[] = [];
  if (front) faces.push(['front', front]);
  if (back) faces.push(['back', back]);
  return faces;
}

/** Whether a mark is held for true: not rejected, and more probably there than not. */
export function isHeld({ state, p }: Pick<BenchMark, 'state' | 'p'>): boolean {
  return state !== 'rejected' && p >= 0.5;
}

/** Marks that are held for true. */
export function standing(marks: readonly BenchMark[]): readonly BenchMark[] {
  return marks.filter(isHeld);
}

/** What was found, and what of it differs from the seller's words, in two sentences. */
export function sayFound(copy: BenchCopy): string {
  const faces = facesOf(copy);
  if (faces.length === 0) return 'Nothing was measured yet.';
  const unsure = faces.filter(([, { outline }]) => !outline || outline.p < 0.5);
  if (unsure.length === faces.length) {
    return 'The outline of the card is *not sure*, so nothing was measured by it.';
  }
  return `${sayMarks(faces)} ${sayAgainst(copy.described)}`;
}

function sayMarks(faces: readonly (readonly [BenchSide, BenchFace])[]): string {
  const said = faces.flatMap(([side, { marks }]) => {
    const kinds = standing(marks).map(({ kind }) => kind);
    if (kinds.length === 0) return [];
    const each = [...new Set(kinds)].map((kind) =>
      sayKinds(kind, kinds.filter((other) => other === kind).length),
    );
    return [`${sayList(each)} on the ${side}`];
  });
  return said.length === 0 ? 'No mark was found.' : `${capital(said.join('; '))}.`;
}

const KINDS: Readonly<Record<string, readonly [one: string, many: string]>> = {
  'corner-wear': ['a worn corner', 'worn corners'],
  'edge-wear': ['a worn edge', 'worn stretches of edge'],
  scratch: ['a scratch', 'scratches'],
  dent: ['a dent', 'dents'],
  crease: ['a crease', 'creases'],
  speck: ['a speck', 'specks'],
  'print-line': ['a print line', 'print lines'],
  stain: ['a stain', 'stains'],
};
const NUMBERS = ['two', 'three', 'four', 'five', 'six', 'seven', 'eight', 'nine', 'ten'];

function sayKinds(kind: string, n: number): string {
  const [one, many] = KINDS[kind] ?? [`a mark of the kind ${kindName(kind)}`, kindName(kind)];
  return n === 1 ? one : `${NUMBERS[n - 2] ?? n} ${many}`;
}

function sayAgainst(described: BenchCopy['described']): string {
  if (!described) return 'The seller’s words are not in the dossier.';
  if (described.silent) return 'The seller’s words promise nothing of the condition.';
  const against = described.compared.filter(({ says }) => says === 'disagrees');
  if (against.length === 0) return 'Nothing measured speaks against the seller’s words.';
  const pairs = new Map<string, string[]>();
  for (const { words, side, measure } of against) {
    pairs.set(words, [...(pairs.get(words) ?? []), `${kindName(measure)} of the ${side}`]);
  }
  const said = [...pairs].map(
    ([words, things]) => `*“${words}” and the ${sayList(things)} disagree*`,
  );
  return `${sayList(said)}, by the words list that you keep.`;
}

/** How far down the pictures could have shown something more; null where none says. */
export function sayLimits({ limits }: BenchFace): string | null {
  if (limits.length === 0) return null;
  const each = limits.map(
    ({ kinds, where, mm }) =>
      `${sayList(kinds.map(kindName), 'or')} ${where} down to ${Number(mm.toPrecision(2))} mm`,
  );
  return `Nothing else that this picture could show: ${sayList(each)}.`;
}

/** A deadline in words: `12 days left`. */
export function sayLeft(left: number): string {
  if (left < 0) return `passed ${count(-left, 'day')} ago`;
  return left === 0 ? 'ends today' : `${count(left, 'day')} left`;
}

/** A day of the dossier in words; empty where it is none. */
export function sayIso(iso: string): string {
  return /^\d{4}-\d\d-\d\d$/.test(iso) ? sayDay(dayFrom(iso)) : iso;
}

const LOOKS: Readonly<Record<string, string>> = {
  photo: 'A picture of the face that none shows yet',
  scan: 'A scan of both faces',
  raking: 'A picture by raking light',
  lamps: 'Pictures by one lamp after the other',
};

/** A further look as a thing to do. */
export function sayLook(look: string): string {
  return LOOKS[look] ?? look;
}
