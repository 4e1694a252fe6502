import type { BenchFace } from '../../contract/index.ts';
import { sayDoubt } from '../../evidence/index.ts';
import { isHeld } from './tell.ts';

/** One measurement of two pictures of a copy. */
export interface BesideRow {
  readonly what: string;
  readonly now: string;
  readonly other: string;
  /** The first less the second with half its 95 % interval; empty where there is none. */
  readonly difference: string;
  /** The difference is more than that. */
  readonly apart: boolean;
}

interface Value {
  readonly value: number;
  readonly sd: number;
}

/** What was measured on two pictures of a copy, line by line; only what both of them show. */
export function besideRows(now: BenchFace, other: BenchFace): readonly BesideRow[] {
  const there = numbersOf(other);
  const rows = [...numbersOf(now)].flatMap(([what, { unit, digits, ...own }]) => {
    const its = there.get(what);
    return its ? [rowOf(what, own, its, unit, digits)] : [];
  });
  return [...rows, marksRow(now, other)];
}

interface Named extends Value {
  readonly unit: string;
  readonly digits: number;
}

function numbersOf({ size, frame }: BenchFace): ReadonlyMap<string, Named> {
  const all = new Map<string, Named>();
  const add = (what: string, value: number, sd: number, unit: string, digits: number) =>
    all.set(what, { value, sd, unit, digits });
  if (size?.sd) {
    add('width', size.mm[0], size.sd[0], ' mm', 2);
    add('height', size.mm[1], size.sd[1], ' mm', 2);
  }
  if (!frame) return all;
  const { borders, bordersSd, leftRight, topBottom, sd, rotation, rotationSd } = frame;
  if (borders && bordersSd)
    for (const side of ['left', 'right', 'top', 'bottom'] as const)
      add(`${side} border`, borders[side], bordersSd[side], ' mm', 2);
  add('share of the left border', leftRight[0], sd[0], ' %', 1);
  add('share of the top border', topBottom[0], sd[1], ' %', 1);
  add('turn of the print', rotation, rotationSd, '°', 2);
  return all;
}

function rowOf(what: string, now: Value, other: Value, unit: string, digits: number): BesideRow {
  const [by, sd] = [now.value - other.value, Math.hypot(now.sd, other.sd)];
  const said = ({ value, sd }: Value) =>
    `${(value + 0).toFixed(digits)} ± ${sayDoubt(sd, digits)}${unit}`;
  const sign = by < 0 ? '−' : '+';
  return {
    what,
    now: said(now),
    other: said(other),
    difference: `${sign}${Math.abs(by).toFixed(digits)} ± ${sayDoubt(sd, digits)}${unit}`,
    apart: Math.abs(by) > 1.96 * sd,
  };
}

function marksRow(now: BenchFace, other: BenchFace): BesideRow {
  const count = ({ marks }: BenchFace) => marks.filter(isHeld).length;
  return {
    what: 'marks held for true',
    now: String(count(now)),
    other: String(count(other)),
    difference: '',
    apart: false,
  };
}
