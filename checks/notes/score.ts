import { readNotes } from '../../src/evidence/index.ts';
import type { Expected, Sheet } from './sheet.ts';

/** How well a sheet was read. */
export interface Score {
  readonly name: string;
  /** Claims that the sheet states, and those of them found with their property and value. */
  readonly stated: number;
  readonly found: number;
  /** Claims that were read. */
  readonly named: number;
  /** Of the claims found, those with the very source. */
  readonly sourced: number;
  /** Days that can be read two ways, and those left open. */
  readonly open: number;
  readonly leftOpen: number;
  /** Claims read from lines that state none. */
  readonly fromNothing: number;
  readonly misses: readonly string[];
  /** The probability of each claim read, and whether it was right. */
  readonly calls: readonly { readonly p: number; readonly right: boolean }[];
}

const bare = (source: string | null) =>
  (source ?? '')
    .toLowerCase()
    .replace(/^(?:the|a|an|le|la|der|die|das) /u, '')
    .trim();

const shown = ({ property, value, source }: Expected) => `${property} ${value} (${source ?? '–'})`;

/** Reads a sheet and compares with what its writer put behind the lines. */
export function scoreOf(sheet: Sheet): Score {
  const { lines } = readNotes(sheet.text);
  const misses: string[] = [];
  const calls: { p: number; right: boolean }[] = [];
  let [stated, found, named, sourced, open, leftOpen, fromNothing] = [0, 0, 0, 0, 0, 0, 0];
  sheet.expected.forEach((expected, index) => {
    const got = [...(lines[index]?.claims ?? [])];
    stated += expected.length;
    named += got.length;
    if (expected.length === 0) fromNothing += got.length;
    const text = sheet.text.split('\n')[index]!;
    for (const one of expected) {
      const twoWay =
        one.value.startsWith('[') &&
        /^\[(\d{4})-\d\d-\d\d[?~]?,\1-\d\d-\d\d[?~]?\]$/u.test(one.value);
      if (twoWay) open += 1;
      const at = got.findIndex((c) => c.property === one.property && c.value === one.value);
      if (at < 0) {
        misses.push(`${sheet.name}:${index + 1} MISSED ${shown(one)} in «${text}»`);
        continue;
      }
      const [claim] = got.splice(at, 1);
      found += 1;
      if (twoWay) leftOpen += 1;
      calls.push({ p: claim!.p, right: true });
      if (bare(claim!.source) === bare(one.source)) sourced += 1;
      else
        misses.push(
          `${sheet.name}:${index + 1} SOURCE ${shown(one)} read «${claim!.source}» in «${text}»`,
        );
    }
    for (const extra of got) {
      calls.push({ p: extra.p, right: false });
      misses.push(`${sheet.name}:${index + 1} WRONG ${shown(extra)} p=${extra.p} in «${text}»`);
    }
  });
  return {
    name: sheet.name,
    stated,
    found,
    named,
    sourced,
    open,
    leftOpen,
    fromNothing,
    misses,
    calls,
  };
}

/** The sum of several scores. */
export function total(scores: readonly Score[]): Omit<Score, 'name' | 'misses' | 'calls'> {
  const sum = (pick: (score: Score) => number) => scores.reduce((n, score) => n + pick(score), 0);
  return {
    stated: sum((s) => s.stated),
    found: sum((s) => s.found),
    named: sum((s) => s.named),
    sourced: sum((s) => s.sourced),
    open: sum((s) => s.open),
    leftOpen: sum((s) => s.leftOpen),
    fromNothing: sum((s) => s.fromNothing),
  };
}
