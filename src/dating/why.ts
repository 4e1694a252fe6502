import {
  type Evidence,
  isoOf,
  sayDay,
  sayEdtf,
  sayList,
  sayRun,
  sayWhen,
} from '../evidence/index.ts';
import type { ExplainedClaim } from './types.ts';

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
  const name = (c: ExplainedClaim) =>
    evidence.sources.find(({ id }) => id === c.source)?.title ?? c.source;
  if (answer.state === 'open')
    return 'Nothing in the dossier bounds this day. A first dated claim is what to add.';
  if (answer.state === 'bounded') {
    const left = sayRun(answer.from, answer.to);
    return `No claim dates it. *The sequence and the rest of the dossier leave ${left}.*`;
  }
  return [sayFor(answer, name), sayAgainst(answer, name)].filter(Boolean).join(' ');
}

const unique = (names: readonly string[]) => [...new Set(names)];

function sayFor(answer: Answer, name: (c: ExplainedClaim) => string): string {
  const onSale = answer.claims.filter((c) => c.property === 'on-sale' && c.p_right >= 0.5);
  const exact = onSale.filter((c) => c.span[0] !== null && c.span[0] === c.span[1]);
  if (answer.state === 'day') return sayNamed(answer, exact, name);
  const when = sayWhen(answer.from, answer.to);
  const wide = unique(onSale.filter((c) => !exact.includes(c)).map(name));
  return wide.length > 0
    ? `From ${sayList(wide)} no day can be had; it came out *${when}*.`
    : `The claims settle on no day; it came out *${when}*.`;
}

function sayNamed(
  { day, claims }: Answer,
  exact: readonly ExplainedClaim[],
  name: (c: ExplainedClaim) => string,
): string {
  const own = exact.filter((c) => c.reading !== 'copied');
  const voices = unique((own.length > 0 ? own : exact).map(name));
  const copies = unique(exact.map(name)).filter((n) => !voices.includes(n));
  const repeat = copies.length > 0 ? `; ${sayList(copies)} only repeated it` : '';
  if (voices.length > 0) return `${sayDay(day)} is named by ${sayList(voices)}${repeat}.`;
  const planned = claims.filter(
    (c) => c.property === 'announced' && c.span[0] === isoOf(day) && c.span[1] === isoOf(day),
  );
  if (planned.length > 0)
    return `No source names ${sayDay(day)} as the day of sale; it was planned for then (${sayList(unique(planned.map(name)))}).`;
  return `No source names ${sayDay(day)}; what they say, with the errors that they make, points to it.`;
}

function sayAgainst(answer: Answer, name: (c: ExplainedClaim) => string): string {
  const worst = slipToName(answer);
  if (worst) return `*${saySlip(worst, name(worst))}*`;
  const cover = answer.claims.find((c) => c.property === 'cover-date');
  if (cover)
    return `*The cover says ${sayEdtf(cover.value)} (${name(cover)}): ${cover.explanation}.*`;
  const bound = answer.claims.find((c) => c.property in BOUNDS && c.p_right >= 0.5);
  return bound ? `${BOUNDS[bound.property]} ${sayEdtf(bound.value)} (${name(bound)}).` : '';
}

/** Probability from which a slip may yet be right. Judgement, no source. */
const MAY_BE_RIGHT = 0.2;

/** The surest slip; where the day is in doubt, the one that may yet be right. */
function slipToName({ p, claims }: Answer): ExplainedClaim | undefined {
  const slips = claims.filter((c) => c.slip);
  const ofSale = slips.filter((c) => c.property === 'on-sale');
  const sign = p < 0.9 ? -1 : 1;
  return (ofSale.length > 0 ? ofSale : slips).sort((a, b) => sign * (a.p_right - b.p_right))[0];
}

const BOUNDS: Readonly<Record<string, string>> = {
  'seen-by': 'It had been seen by',
  'not-before': 'It was not out before',
};

function saySlip(
  { property, value, p_right, p_reading, explanation }: ExplainedClaim,
  who: string,
): string {
  const said =
    property === 'on-sale'
      ? sayEdtf(value)
      : `the ${property.replaceAll('-', ' ')} ${sayEdtf(value)}`;
  const capital = said.charAt(0).toUpperCase() + said.slice(1);
  if (p_right >= MAY_BE_RIGHT) return `${capital} in ${who} may yet be right.`;
  const surely = p_reading >= 0.5 ? 'most probably' : 'perhaps';
  return `${capital} in ${who} is ${surely} ${explanation}.`;
}
