import { medianOf } from '../../maths/index.ts';
import type { InkScreen, PrintProcess } from '../screen/screen.ts';
import type { Finding } from './finding.ts';
import { log10Ratio, logT } from './likelihood-ratio.ts';

type Process = PrintProcess['process'];

/**
 * How often a process is read wrongly (3 of 60 hard invented prints, `docs/methods/bench-screen.md`),
 * and how prints of cards are made at large. The shares are judgement, no source.
 */
const MISREAD = 0.05;
const AT_LARGE: Readonly<Record<Process, number>> = {
  halftone: 0.7,
  stochastic: 0.15,
  continuous: 0.15,
};

/**
 * Another print of the design may well have the same ruling, since few are in use, and each angle the
 * same, since tables of them are; else it differs so far. Judgement, no source.
 */
const RULING = { alike: 0.35, sd: 0.15 };
const ANGLES = { alike: 0.8 };

/** One printing: rulings by scanners' scale and paper, logarithm; angles by plates and measuring. */
const KEPT = { ruling: 0.004, angleDeg: 0.8 };

/**
 * What the print processes of a copy and of references say: the process, the ruling of the inks that
 * both have, and their angles against each other (a piece may lie turned in its scan). Each compares
 * one printing with another print of the design. None where a side has no scan that tells.
 *
 * Plates made anew from the same files have the same screens; then these numbers tell nothing, and
 * that another print may agree by chance is part of the ratio.
 */
export function screenFindings(
  copy: readonly PrintProcess[],
  references: readonly PrintProcess[],
): readonly Finding[] {
  const [own] = copy;
  if (!own || references.length === 0) return [];
  const pairs = references.map((one) => sharedInks(own.screens, one.screens));
  return [
    processFinding(own.process, references),
    ...rulingFinding(pairs, references),
    ...angleFinding(pairs),
  ];
}

function processFinding(own: Process, references: readonly PrintProcess[]): Finding {
  const differing = references.filter(({ process }) => process !== own).length;
  const share = differing / references.length;
  const same = (1 - share) * (1 - MISREAD) + (share * MISREAD) / 2;
  return {
    what: 'screen: share of references printed by another process',
    whereMm: null,
    difference: share,
    sd: Math.sqrt((MISREAD * (1 - MISREAD)) / references.length),
    log10Lr: log10Ratio(Math.log(same), Math.log(AT_LARGE[own])),
  };
}

interface Shared {
  /** Logarithm of the copy's ruling over the reference's. */
  readonly ruling: number;
  /** The copy's angle less the reference's, degrees, modulo 90. */
  readonly turn: number;
}

function sharedInks(own: readonly InkScreen[], other: readonly InkScreen[]): readonly Shared[] {
  return own.flatMap(({ ink, lpi, angleDeg }) => {
    const like = ink === 'unknown' ? undefined : other.find((one) => one.ink === ink);
    if (!like) return [];
    return [{ ruling: Math.log(lpi / like.lpi), turn: within45(angleDeg - like.angleDeg) }];
  });
}

function rulingFinding(
  pairs: readonly (readonly Shared[])[],
  references: readonly PrintProcess[],
): readonly Finding[] {
  const values = pairs.flatMap((pair) =>
    pair.length > 0 ? [medianOf(pair.map((p) => p.ruling))] : [],
  );
  if (values.length === 0) return [];
  const value = medianOf(values);
  const same = logT(value, 4, KEPT.ruling);
  const apart = logT(value, 4, RULING.sd);
  const other = logOf(RULING.alike * Math.exp(same) + (1 - RULING.alike) * Math.exp(apart));
  const lpi = medianOf(references.flatMap(({ screens }) => screens.map((screen) => screen.lpi)));
  return [
    {
      what: 'screen: ruling, lines an inch',
      whereMm: null,
      difference: lpi * (Math.exp(value) - 1),
      sd: lpi * KEPT.ruling,
      log10Lr: log10Ratio(same, other),
    },
  ];
}

/** How far the inks' angles lie otherwise, once the whole piece is turned to fit best. */
function angleFinding(pairs: readonly (readonly Shared[])[]): readonly Finding[] {
  const [pair] = [...pairs].sort((a, b) => b.length - a.length);
  if (!pair || pair.length < 2) return [];
  const offs = offsOf(pair.map(({ turn }) => turn));
  // The common turn is fitted, so that one angle fewer than there are tells anything.
  const share = (offs.length - 1) / offs.length;
  let [same, other] = [0, 0];
  for (const off of offs) {
    const log = logT(off, 4, KEPT.angleDeg);
    same += share * log;
    other += share * logOf(ANGLES.alike * Math.exp(log) + (1 - ANGLES.alike) / 90);
  }
  return [
    {
      what: 'screen: angles of the inks against each other, degrees',
      whereMm: null,
      difference: Math.max(...offs.map(Math.abs)),
      sd: KEPT.angleDeg,
      log10Lr: log10Ratio(same, other),
    },
  ];
}

/** What is left of turns, modulo 90, after the turn that most of them share. */
function offsOf(turns: readonly number[]): readonly number[] {
  const left = (by: number) => turns.map((turn) => within45(turn - by));
  const size = (by: number) => left(by).reduce((sum, off) => sum + Math.min(Math.abs(off), 10), 0);
  const best = turns.reduce((a, b) => (size(b) < size(a) ? b : a));
  const near = left(best).filter((off) => Math.abs(off) < 3);
  return left(best + near.reduce((sum, off) => sum + off, 0) / near.length);
}

function within45(degrees: number): number {
  return ((((degrees + 45) % 90) + 90) % 90) - 45;
}

/** A density too small to be told from none is 1e-30, so that a ratio stays finite. */
function logOf(density: number): number {
  return Math.log(Math.max(density, 1e-30));
}
