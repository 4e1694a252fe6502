import type { Evidence } from '../evidence/index.ts';
import type { ExplainedClaim } from './types.ts';
import { sayDay, sayList, sayRun } from './words.ts';

/** What the sentence about one printing is made of. */
export interface Answer {
  readonly day: number;
  readonly p: number;
  readonly from: number;
  readonly to: number;
  readonly state: 'day' | 'window' | 'bounded' | 'open';
  readonly claims: readonly ExplainedClaim[];
}

/** Why a printing is dated as it is, in a sentence or two; what decides stands between asterisks. */
export function sayWhy(evidence: Evidence, answer: Answer): string {
  const sources = new Map(evidence.sources.map((s) => [s.id, s.title ?? s.id]));
  const name = (c: ExplainedClaim) => sources.get(c.source) ?? c.source;
  if (answer.state === 'open')
    return 'Nothing in the dossier bounds this day. A first dated claim is what to add.';
  if (answer.state === 'bounded') {
    return `No claim dates it. *Sequence and the rest of the dossier leave ${sayRun(answer.from, answer.to)}.*`;
  }
  return [sayFor(answer, name), sayAgainst(answer, name)].filter(Boolean).join(' ');
}

const unique = (names: readonly string[]) => [...new Set(names)];

function sayFor(answer: Answer, name: (c: ExplainedClaim) => string): string {
  const onSale = answer.claims.filter((c) => c.property === 'on-sale' && c.p_right >= 0.5);
  const exact = onSale.filter((c) => c.span[0] !== null && c.span[0] === c.span[1]);
  const own = exact.filter((c) => c.reading !== 'copied');
  const wide = unique(onSale.filter((c) => !exact.includes(c)).map(name));
  if (answer.state === 'day') {
    const voices = unique((own.length > 0 ? own : exact).map(name));
    const copies = unique(exact.filter((c) => c.reading === 'copied').map(name)).filter(
      (n) => !voices.includes(n),
    );
    const repeat =
      copies.length > 0
        ? `; ${sayList(copies)} only ${copies.length > 1 ? 'repeat' : 'repeats'} another`
        : '';
    if (voices.length === 0)
      return `No source names the day; the errors that sources make point to ${sayDay(answer.day)}.`;
    return `${sayList(voices)} ${voices.length > 1 ? 'name' : 'names'} ${sayDay(answer.day)}${repeat}.`;
  }
  const run = sayRun(answer.from, answer.to);
  if (wide.length > 0)
    return `${sayList(wide)} ${wide.length > 1 ? 'give' : 'gives'} no day; it was *${run}*.`;
  return `The claims do not settle on a day; it was *${run}*.`;
}

function sayAgainst(answer: Answer, name: (c: ExplainedClaim) => string): string {
  const slips = answer.claims.filter((c) => c.slip);
  const worst = slips.sort((a, b) => a.p_right - b.p_right)[0];
  if (worst) return `*${name(worst)} says ${worst.value}: ${worst.explanation}.*`;
  const cover = answer.claims.find((c) => c.property === 'cover-date');
  if (cover) return `*${name(cover)} is dated ${cover.value}: ${cover.explanation}.*`;
  const bound = answer.claims.find((c) => c.property === 'seen-by' || c.property === 'not-before');
  return bound ? `${name(bound)} agrees: ${bound.explanation} (${bound.value}).` : '';
}
