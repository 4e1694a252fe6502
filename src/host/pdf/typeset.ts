import { createRequire } from 'node:module';
import { NodeCompiler, type NodeTypstDocument } from '@myriaddreamin/typst-ts-node-compiler';
import type { Paper } from '../../chronicle/index.ts';
import { type CutFont, cutFonts, type Wish } from '../fonts/cut.ts';
import { FONT_MAKERS } from '../fonts/makers.ts';
import { pagesApart } from './pages.ts';
import { TEMPLATE } from './template.ts';
import { textIn, withoutLetters } from './words.ts';

/** Where the files of a paper stand for the typesetter; nothing is read from there on a disk. */
const ROOT = '/paper-without-a-disk';
/** The letters that the template sets. */
const WISHES: readonly Wish[] = [
  { family: 'archivo', weight: 400 },
  { family: 'archivo', weight: 600 },
  { family: 'archivo', weight: 400, italic: true },
  { family: 'newsreader', weight: 400 },
  { family: 'newsreader', weight: 400, italic: true },
  { family: 'newsreader', weight: 600 },
];
/** What is written beside the paper's own words: numbers of pages, dots, code points. */
const OWN_LETTERS = '0123456789 ABCDEF[U+]/.–·…';

/** What beside paper and pictures decides how pages look. */
export const PAGE_MAKERS: readonly unknown[] = [
  ...[TEMPLATE, WISHES, OWN_LETTERS, FONT_MAKERS],
  createRequire(import.meta.url)('@myriaddreamin/typst-ts-node-compiler/package.json').version,
];

/** A PDF, and how many pages it came to. */
export interface PdfMade {
  readonly bytes: Uint8Array;
  readonly pages: number;
}

/**
 * Sets a paper on pages as a tagged PDF (`iso:2014`) with its fonts in it. There is no clock in
 * it: the same paper and pictures give the same bytes. Letters that the house's fonts lack are
 * written as their code points.
 *
 * @param pictures bytes by the names that the paper gives them
 * @throws Error where the paper cannot be set, with the typesetter's reason
 */
export async function pdfOf(
  paper: Paper,
  pictures: ReadonlyMap<string, Uint8Array> = new Map(),
): Promise<PdfMade> {
  return await set(paper, pictures, (compiler, result) => ({
    bytes: compiler.pdf(result, { pdfStandard: 'ua-1', creationTimestamp: 0 }),
    pages: result.numOfPages,
  }));
}

/** Drawings (SVG) of the pages of a paper as `pdfOf` sets them. */
export async function pageDrawings(
  paper: Paper,
  pictures: ReadonlyMap<string, Uint8Array> = new Map(),
): Promise<{ readonly drawings: readonly string[]; readonly pages: number }> {
  return await set(paper, pictures, (compiler, result) => {
    const pages = result.numOfPages;
    return { drawings: pagesApart(compiler.plainSvg(result), pages), pages };
  });
}

async function set<T>(
  paper: Paper,
  pictures: ReadonlyMap<string, Uint8Array>,
  draw: (compiler: NodeCompiler, result: NodeTypstDocument) => T,
): Promise<T> {
  const { fonts, missing } = await fontsFor(paper);
  const compiler = NodeCompiler.create({
    workspace: ROOT,
    fontArgs: [{ fontBlobs: fonts.map(({ bytes }) => Buffer.from(bytes)) }],
  });
  for (const [name, bytes] of pictures) compiler.mapShadow(`${ROOT}/${name}`, Buffer.from(bytes));
  const families = [...new Set(fonts.map(({ family }) => family))];
  const data = { paper: withoutLetters(paper, missing), fonts: families };
  compiler.mapShadow(`${ROOT}/paper.json`, Buffer.from(JSON.stringify(data)));
  const { result, ...answer } = compiled(compiler);
  if (result === null) throw new Error(`the paper cannot be set: ${answer.reason}`);
  try {
    return draw(compiler, result);
  } finally {
    compiler.resetShadow();
    compiler.evictCache(0);
  }
}

function compiled(compiler: NodeCompiler) {
  const answer = compiler.compile({ mainFileContent: TEMPLATE });
  const reason = JSON.stringify(answer.takeError()?.shortDiagnostics ?? []);
  return { result: answer.result, reason };
}

type Fonts = Awaited<ReturnType<typeof fontsOf>>;

/** The fonts of the paper before: the settings of a document have the same letters. */
let last: { readonly of: string; readonly fonts: Promise<Fonts> } | undefined;

function fontsFor(paper: Paper): Promise<Fonts> {
  const letters = [...new Set(`${textIn(paper)}${OWN_LETTERS}`)].sort().join('');
  const of = `${paper.language} ${letters}`;
  if (last?.of !== of) last = { of, fonts: fontsOf(letters, paper.language) };
  return last.fonts;
}

async function fontsOf(text: string, language: string) {
  const fonts: CutFont[] = [];
  const missing = new Set<string>();
  for (const wish of WISHES) {
    const wanted = wish.family === 'archivo' && wish.italic !== true ? text : lettersOf(fonts);
    const cut = await cutFonts(wanted, wish, { format: 'ttf', language });
    fonts.push(...cut.fonts);
    for (const letter of cut.missing) missing.add(letter);
  }
  return { fonts, missing: [...missing].join('') };
}

/** The letters that the house's own family holds; those of Japanese and Korean are the same in all. */
function lettersOf(fonts: readonly CutFont[]): string {
  return fonts
    .filter(({ family }) => family.startsWith('Archivo'))
    .map(({ letters }) => letters)
    .join('');
}
