import { type Evidence, isoOf } from '../evidence/index.ts';
import { compile } from './compile.ts';
import { sample } from './run.ts';
import { bestDay, fewestDays, shortestRun, spreadDays } from './spread.ts';
import { weekdayWeights } from './weekdays.ts';

export function date(evidence: Evidence, options: { seed?: number; effort?: 'first' | 'refined'; chains?: number; warmUp?: number; keep?: number } = {}): any {
  const compiled = compile(evidence);
  const { problem, releases } = compiled;
  const post = sample(evidence, compiled, { seed: options.seed ?? 1, chains: options.chains ?? 4, warmUp: options.warmUp ?? 40, keep: options.keep ?? 80 });
  const week = new Float64Array(7);
  const weights = releases.events.map((_, e) => {
    weekdayWeights(problem, post.states[0]!, e, week);
    return spreadDays(problem, e, post.cells, week);
  });
  const printings = evidence.printings.map((p, i) => {
    const w = weights[releases.eventOf[i]!]!;
    const best = bestDay(w);
    const run = shortestRun(w, 0.95);
    const days = fewestDays(w, 0.999);
    return {
      id: p.id, best: isoOf(best.day), p_best: best.p,
      interval95: [isoOf(run.from), isoOf(run.to)], p_interval: run.p,
      days: Array.from(days.days, (d, j) => [isoOf(d), days.p[j]!]),
      claims: [],
    };
  });
  const n = problem.nSources;
  const derives = evidence.sources.map((s, i) => {
    const counts = new Map<string, number>();
    for (const c of post.parents) { const q = c[i]!; if (q >= 0) counts.set(evidence.sources[q]!.id, (counts.get(evidence.sources[q]!.id) ?? 0) + 1 / post.parents.length); }
    return { id: s.id, accuracy: null, accuracy95: null, derives: [...counts].map(([from, p]) => ({ from, p })) };
  });
  return { printings, sources: derives };
}
