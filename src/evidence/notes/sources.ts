import type { Passage } from './passage.ts';
import type { Governed } from './properties.ts';
import { ENOUGH, type Run } from './runs.ts';

const PER_BOUNDARY = 3;
const OVER_DATE = 12;
const FARTHEST = 40;

/** Tokens, boundaries and dates between a run and a date. */
function distance(passage: Passage, from: number, to: number, label: boolean): number {
  let cost = 0;
  let inDate = false;
  for (let at = from; at < to; at += 1) {
    const boundary = passage.boundaries[at];
    if (boundary === 'hard' && !label) return Number.POSITIVE_INFINITY;
    if (boundary === 'light') cost += PER_BOUNDARY;
    const date = passage.roles[at] === 'date';
    if (date && !inDate) cost += OVER_DATE;
    inDate = date;
    cost += 0.5;
    if (cost > FARTHEST) return Number.POSITIVE_INFINITY;
  }
  return cost;
}

function costOf(passage: Passage, run: Run, index: number): number {
  const time = passage.times[index]!;
  const lead = run.to <= time.from;
  if (lead && run.place === 'trail') {
    return run.label ? 30 : Number.POSITIVE_INFINITY;
  }
  if (!lead && run.place === 'lead') return Number.POSITIVE_INFINITY;
  const cost = lead
    ? distance(passage, run.to, time.from, run.label)
    : distance(passage, time.to, run.from, false);
  const bracket = !lead && passage.tokens[run.from - 1]?.text === '(' ? -PER_BOUNDARY : 0;
  return cost + bracket - Math.min(run.score, 6);
}

/** What a cover, a label or a copyright line says needs no other source from farther off. */
function selfEvident(governed: Governed | undefined): boolean {
  return /^(?:cover-date|label-year|copyright-year)$/u.test(governed?.meaning ?? '');
}

/** `announced for spring 97, out 12 June 97 (Sheaf)`: only a dash lends the source to both. */
function ofAnother(
  passage: Passage,
  run: Run,
  index: number,
  governed: readonly (Governed | undefined)[],
): boolean {
  const next = passage.times[index + 1];
  if (!next || next.from >= run.from || passage.tokens[run.from - 1]?.norm === '-') return false;
  let last = index + 1;
  while (passage.times[last + 1] && passage.times[last + 1]!.from < run.from) last += 1;
  return (governed[index]?.meaning ?? 'on-sale') !== (governed[last]?.meaning ?? 'on-sale');
}

/** For every date of a passage the run of words that names its source, if any. */
export function sourcesFor(
  passage: Passage,
  runs: readonly Run[],
  governed: readonly (Governed | undefined)[],
): (Run | undefined)[] {
  const strong = runs.filter((run) => run.score >= ENOUGH);
  let first = 0;
  return passage.times.map((_, index) => {
    let best: Run | undefined;
    let least = Number.POSITIVE_INFINITY;
    const reach = (passage.times[index + 3]?.from ?? passage.tokens.length) + 1;
    const back = passage.times[index - 6]?.from ?? 0;
    while (first < strong.length && strong[first]!.to < back && !strong[first]!.label) first += 1;
    for (let r = first; r < strong.length && strong[r]!.from < reach; r += 1) {
      const cost = costOf(passage, strong[r]!, index);
      if (cost >= OVER_DATE - 6 && selfEvident(governed[index])) continue;
      if (ofAnother(passage, strong[r]!, index, governed)) continue;
      if (cost < least) {
        least = cost;
        best = strong[r];
      }
    }
    return best;
  });
}
