import type { Statement } from './statements.ts';

/** The statements as the events see them, sorted by event; see `Problem`. */
export interface Views {
  readonly nViews: number;
  readonly viewStart: Int32Array;
  readonly viewEvent: Int32Array;
  readonly viewStatement: Int32Array;
  readonly viewSource: Int32Array;
  readonly viewRing: Int32Array;
  readonly viewShare: Float32Array;
  readonly viewLo: Int32Array;
  readonly viewHi: Int32Array;
  readonly firstView: Int32Array;
}

/** Lays out a view of each statement at each event that it may concern. */
export function layViews(statements: readonly Statement[], nEvents: number): Views {
  const viewStart = new Int32Array(nEvents + 1);
  for (const { events } of statements) for (const e of events) viewStart[e + 1]!++;
  for (let e = 0; e < nEvents; e++) viewStart[e + 1]! += viewStart[e]!;
  const n = viewStart[nEvents]!;
  const next = viewStart.slice();
  const out = {
    nViews: n,
    viewStart,
    viewEvent: new Int32Array(n),
    viewStatement: new Int32Array(n),
    viewSource: new Int32Array(n),
    viewRing: new Int32Array(n),
    viewShare: new Float32Array(n),
    viewLo: new Int32Array(n),
    viewHi: new Int32Array(n),
    firstView: new Int32Array(statements.length),
  };
  statements.forEach(({ source, events, values }, i) => {
    const { spans } = values[0]!;
    const first = next[events[0]!]!;
    let before = -1;
    for (const e of events) {
      const v = next[e]!++;
      out.viewEvent[v] = e;
      out.viewStatement[v] = i;
      out.viewSource[v] = source;
      out.viewShare[v] = 1 / events.length;
      out.viewLo[v] = Math.max(-1e9, spans[0]!.lo);
      out.viewHi[v] = Math.min(1e9, spans.at(-1)!.hi);
      if (before >= 0) out.viewRing[before] = v;
      before = v;
    }
    out.viewRing[before] = first;
    out.firstView[i] = first;
  });
  return out;
}
