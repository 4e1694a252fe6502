import type { Picture } from '../picture.ts';
import { type Candidate, separate } from './candidates.ts';
import { type Chosen, chooseScreens } from './choose.ts';
import { areOfOneInk, type InkName } from './inks.ts';
import { meanOf, type OverPaper, overPaper, unscreenedShare } from './over-paper.ts';
import { rosetteIn } from './rosette.ts';
import { spectrumOf, TILE } from './spectrum.ts';
import { strengthOf, textureOf } from './strength.ts';

/** The screen of one ink. */
export interface InkScreen {
  readonly ink: InkName;
  /** Ruling, lines an inch. */
  readonly lpi: number;
  /** Counter-clockwise from the picture's x axis with y up, 0 to under 90. */
  readonly angleDeg: number;
  /** Root mean square of the density, over three channels, of its two fundamental waves. */
  readonly strength: number;
}

/** How a card was printed, as far as its scan tells. */
export interface PrintProcess {
  readonly process: 'halftone' | 'stochastic' | 'continuous';
  /** One for each ink found, strongest first; none unless the process is halftone. */
  readonly screens: readonly InkScreen[];
  /** The pattern that screens 30 degrees apart make together is seen; null without two such. */
  readonly rosette: boolean | null;
  /** Root mean square density of what is finer than 0.4 mm and no screen: grain, scattered dots. */
  readonly texture: number;
  /** Rulings that the scan could show, lines an inch. */
  readonly range: readonly [low: number, high: number];
}

/** Why a scan cannot be measured, with what to do. */
export interface Unmeasurable {
  readonly why: string;
}

/** Rulings looked for, lines an inch: 48 to 80 a centimetre (ISO 12647-9:2021), and older coarse ones. */
const RULINGS = [80, 240] as const;

/** Crossed lines coarser than any screen are looked for down to here, lines an inch. */
const COARSEST = 20;

/** The finest ruling in ordinary use, 80 lines a centimetre (ISO 12647-9:2021), lines an inch. */
const FINEST = 203;

/** Pixels that one line of a screen must cover to be measured. */
const PIXELS_A_LINE = 4;

/** Share of other colours from which a lone lattice is drawn: one-ink prints had 0.04 at most. Judgement. */
const OTHER_COLOURS = 0.05;

/**
 * How plain a second screen is at least, as a share of the plainest. Judgement: 0.06 at least in
 * invented prints, 0.01 at most beside lines drawn crosswise.
 */
const ALIKE = 0.02;

/**
 * Texture over the root of the mean density from which dots count as scattered: dots that fall
 * anywhere vary as their mean does. Judgement: continuous prints had 0.045 at most, dots 0.17 at least.
 */
const SCATTERED = 0.09;

/** Mean density below which a piece is bare paper and noise. Judgement, no source. */
const BARE = 0.02;

/**
 * Tells the print process from a scan: the spectra of the densities, separated into inks, show for
 * every screened ink a square lattice of peaks (`welch:1967`).
 *
 * @param dpi dots an inch of the scan; null where not known
 */
export function printProcessOf(
  picture: Picture,
  dpi: number | null = picture.dpi,
): PrintProcess | Unmeasurable {
  const why = whyNot(picture, dpi);
  if (why !== null || dpi === null) return { why: why ?? NO_DPI };
  const reduce = Math.max(1, Math.floor(dpi / 1000));
  const perInch = dpi / reduce;
  const high = Math.min(RULINGS[1], perInch / PIXELS_A_LINE);
  const spectrum = spectrumOf(picture, reduce, Math.min(0.45, (high * 1.05) / perInch));
  const { candidates, views } = separate(spectrum, COARSEST / perInch, high / perInch);
  const texture = textureOf(spectrum, RULINGS[0] / perInch, high / perInch);
  const chosen = chooseScreens(candidates, RULINGS[0] / perInch);
  const over = overPaper(picture);
  const isScattered = texture > SCATTERED * Math.sqrt(Math.max(BARE, meanOf(over)));
  const screened = areOfSeveralInks(chosen) ? chosen : strongestOf(chosen);
  const found = isHalftone(over, screened, isScattered) ? screened : [];
  const screens = found.map(({ ink, peak }) => ({
    ink,
    lpi: peak.frequency * perInch,
    angleDeg: peak.angleDeg,
    strength: strengthOf(spectrum, peak),
  }));
  return {
    process: found.length > 0 ? 'halftone' : isScattered ? 'stochastic' : 'continuous',
    screens: screens.sort((a, b) => b.strength - a.strength),
    rosette: rosetteIn(found, views),
    texture,
    range: [RULINGS[0], high],
  };
}

/**
 * Whether lattices are of several inks: nearly as plain as each other, since a press prints all its
 * inks, and of several colours or, where compression left them grey, plain by themselves.
 */
function areOfSeveralInks(chosen: readonly Chosen[]): boolean {
  const most = Math.max(...chosen.map(({ peak }) => peak.lesser));
  const alike = chosen.map(({ peak }) => peak).filter(({ lesser }) => lesser > ALIKE * most);
  return (
    alike.filter(isPlain).length > 1 ||
    alike.some((one) => alike.some((other) => !areOfOneInk(one.colour, other.colour)))
  );
}

function strongestOf(chosen: readonly Chosen[]): readonly Chosen[] {
  return [...chosen].sort((a, b) => b.peak.power - a.peak.power).slice(0, 1);
}

/**
 * A screen alone must be plainer than one among several, and of the only ink there is: lines may be
 * drawn crosswise too, beside colours that no screen makes.
 */
function isHalftone(over: OverPaper, chosen: readonly Chosen[], isScattered: boolean): boolean {
  const [first, second] = chosen;
  if (first === undefined) return false;
  if (second !== undefined) return true;
  return (
    !isScattered && isPlain(first.peak) && unscreenedShare(over, first.peak.colour) < OTHER_COLOURS
  );
}

function isPlain(peak: Candidate): boolean {
  return peak.lesser > 300 && peak.greater < 2 * peak.lesser;
}

const NO_DPI =
  'The dots an inch of the scan are not known: state them with --dpi, or scan at 1,200 dpi or more.';

function whyNot({ width, height }: Picture, dpi: number | null): string | null {
  if (dpi === null || !(dpi > 0)) return NO_DPI;
  const seen = Math.floor(dpi / PIXELS_A_LINE);
  if (seen < FINEST - 4)
    return `At ${Math.round(dpi)} dpi a screen finer than ${seen} lines an inch does not show, and cards are printed with up to ${FINEST}: scan at 1,200 dpi or more. Where the file states a wrong figure, give the right one with --dpi.`;
  const least = TILE * Math.max(1, Math.floor(dpi / 1000));
  if (Math.min(width, height) < least)
    return `A piece of ${width} × ${height} pixels is too small to measure a screen: scan at least ${Math.ceil((least / dpi) * 25.4)} mm each way, that is ${least} pixels.`;
  return null;
}
