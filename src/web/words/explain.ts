import type { WireDating } from '../../contract/index.ts';
import { sayWindow } from './days.ts';
import { count, outOfHundred, sayP } from './numbers.ts';

type Dated = WireDating['printings'][number];
type Source = WireDating['sources'][number];
type Sequence = WireDating['sequences'][number];

/** How the probability of the best day came about. */
export function explainBest(
  dated: Dated,
  dating: Pick<WireDating, 'monte_carlo_error' | 'effort'>,
): string {
  if (!dated.best) return 'No claim and no sequence bounds this day.';
  const from = `Worked out from ${count(dated.claims.length, 'claim')}, each weighed by how often its source is right.`;
  const error =
    dating.monte_carlo_error > 0
      ? ` Error of sampling: at most ${dating.monte_carlo_error.toFixed(3)}.`
      : '';
  const first =
    dating.effort === 'first' ? ' This is the first answer; a refined one follows.' : '';
  return `Of 100 days believed this firmly, ${outOfHundred(dated.p_best).replace(' of 100', '')} are right. ${from}${error}${first}`;
}

/** What the window of a printing means. */
export function explainWindow(dated: Dated): string {
  if (!dated.interval95) return 'Nothing bounds the day.';
  return `The shortest run of days that holds at least 95 %: ${sayWindow(...dated.interval95, false)}. It holds ${sayP(dated.p_interval)}.`;
}

/** What the probability of a claim means. */
export function explainRight(pRight: number, explanation: string, pReading: number): string {
  return `Probability that the claim, read with its own precision, holds: ${sayP(pRight)}. Most probable reading (${sayP(pReading)}): ${explanation}`;
}

/** What the accuracy of a source means. */
export function explainAccuracy(source: Source): string {
  if (source.accuracy === null)
    return 'It makes no claim of the day on sale, so it has no accuracy.';
  const [low, high] = source.accuracy95 ?? [0, 1];
  return `Share of its claims of the day on sale that hold the true day. With probability 0.95 it lies between ${sayP(low)} and ${sayP(high)}; judged from ${count(source.claims, 'claim')} against all the others.`;
}

/** What the probability of derivation means. */
export function explainDerives(from: string, p: number): string {
  return `Probability that it took from ${from} directly: ${sayP(p)}. Rare values that both share speak for it; a derived claim adds no weight.`;
}

/** What the probability of a sequence means. */
export function explainSequence(sequence: Sequence, earlier: string, later: string): string {
  if (sequence.stated) return 'The dossier states this sequence as certain, for a stated reason.';
  const same = sequence.p_same_day >= 0.005 ? `; on one day: ${sayP(sequence.p_same_day)}` : '';
  return `Probability that the ${earlier} came before the ${later}: ${sayP(sequence.p)}${same}. Summed over all their days together.`;
}

/** What the gain of a lead means. */
export const EXPLAIN_GAIN =
  'Expected information about the day of release, in bits: 1 bit halves the doubt. From what sources of this kind have told so far.';

/** What a share of readings means. */
export function explainShare(share: number, [low, high]: readonly [number, number]): string {
  return `${sayP(share)} of its claims came about this way; with probability 0.95 between ${sayP(low)} and ${sayP(high)}.`;
}

/** What being first means. */
export function explainFirst(p: number): string {
  return `Probability that no printing of the dossier is earlier: ${sayP(p)}. Printings of one day share it, so these can pass 1 together.`;
}

/** What a mode is. */
export function explainMode(from: string, to: string, p: number): string {
  const when = sayWindow(from, to, false);
  return `The evidence can be read in more than one way; ${sayP(p)} of the probability lies at ${when}.`;
}
