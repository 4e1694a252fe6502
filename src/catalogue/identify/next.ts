import type { NumberValue } from '../traits/value.ts';
import { type Look, lookKind } from './looks.ts';
import { anyNumber, guessed, measuredOn, type NumberChannel, sdOfValue } from './number-channel.ts';
import { type Outcome, outcome, type TraitModel } from './outcomes.ts';
import { groupOf, type Models } from './seen.ts';
import { factorOf, type Group, type Joint, type Levels, overLevels } from './weigh.ts';

/** A look that would tell more. */
export interface NextLook {
  readonly trait: string;
  readonly sees: Look;
  /** Expected fall of the entropy of the answer, in bits. */
  readonly gain_bits: number;
  readonly gain_per_effort: number;
  /** As written in the dossier; empty where it is not told. */
  readonly region: string;
  readonly side: 'front' | 'back';
  /** What to weigh before the look; empty where it touches nothing. */
  readonly caution: string;
}

/** What was weighed so far. */
export interface Weighed {
  readonly prior: Float64Array;
  readonly levels: Levels;
  readonly groups: readonly Group[];
  readonly joint: Joint;
  /** By hypothesis: which candidate it counts for. */
  readonly candidateOf: Int32Array;
}

/** Gains below it are not worth a line. */
const LEAST_BITS = 0.0005;

/** Looks at traits in `open`, the best for its effort first, each by enumeration of what it may show. */
export function nextLooks(models: Models, open: readonly string[], weighed: Weighed): NextLook[] {
  const looks = open.flatMap((name) => {
    const model = models.get(name);
    if (!model) return [];
    const { look: sees, region } = model.trait;
    const { effort, caution } = lookKind(sees);
    const gain_bits = gainOf(model, weighed);
    const side: NextLook['side'] = /\bback\b/i.test(`${region} ${name}`) ? 'back' : 'front';
    const gain_per_effort = gain_bits / effort;
    return [{ trait: name, sees, gain_bits, gain_per_effort, region, side, caution }];
  });
  return looks
    .filter(({ gain_bits }) => gain_bits >= LEAST_BITS)
    .sort((a, b) => b.gain_per_effort - a.gain_per_effort);
}

/** Expected information of a look at a trait on what the copy is (`lindley:1956`), in bits. */
export function gainOf(model: TraitModel, weighed: Weighed): number {
  const { prior, levels, groups, joint, candidateOf } = weighed;
  const look = model.trait.look;
  const { key, slip } = groupOf(model.trait, look);
  const old = groups.find((group) => group.key === key) ?? { key, slip, parts: [] };
  const { misread } = lookKind(look);
  const before = levels.shifts.map((shift) => factorOf(old, shift, prior));
  let after = 0;
  for (const one of outcomesOf(model)) {
    const group = { ...old, parts: [...old.parts, { outcome: one, misread }] };
    const p = new Float64Array(prior.length);
    levels.shifts.forEach((shift, m) => {
      const factor = factorOf(group, shift, prior);
      const [row, was] = [joint[m] as Float64Array, before[m] as Float64Array];
      for (let h = 0; h < p.length; h++) {
        if (!((was[h] as number) > 0)) continue;
        p[h] = (p[h] as number) + ((row[h] as number) * (factor[h] as number)) / (was[h] as number);
      }
    });
    const all = p.reduce((sum, x) => sum + x, 0);
    if (all > 0)
      after +=
        all *
        entropy(
          p.map((x) => x / all),
          candidateOf,
        );
  }
  return Math.max(0, entropy(overLevels(joint), candidateOf) - after);
}

/** Entropy of the answer in bits. */
export function entropy(p: Float64Array, candidateOf: Int32Array): number {
  const sums = new Float64Array(p.length);
  p.forEach((one, h) => {
    const at = candidateOf[h] as number;
    sums[at] = (sums[at] as number) + one;
  });
  return sums.reduce((bits, one) => (one > 0 ? bits - one * Math.log2(one) : bits), 0);
}

/** All that a look may show: every word, that there is none, something new, and each span of numbers. */
export function outcomesOf(model: TraitModel): Outcome[] {
  const { channel } = model;
  const words = Array.from({ length: channel.other + 1 }, (_, u) => u)
    .filter((u) => u !== channel.number)
    .map((u) => {
      const read = new Float64Array(channel.other + 1);
      read[u] = 1;
      return outcome(model, read);
    });
  return model.numbers ? [...words, ...numberOutcomes(model, model.numbers)] : words;
}

/** Spans of numbers: a third of the narrowest spread wide, as many as there is room for. */
const MOST_SPANS = 240;

function numberOutcomes(model: TraitModel, channel: NumberChannel): Outcome[] {
  const bearers = model.trait.values.filter((one): one is NumberValue => one?.is === 'number');
  const sds = bearers.map(sdOfValue);
  const lo = Math.min(...bearers.map(({ value }, i) => value - 4 * (sds[i] as number)));
  const hi = Math.max(...bearers.map(({ value }, i) => value + 4 * (sds[i] as number)));
  const count = Math.ceil(Math.min(MOST_SPANS, (3 * (hi - lo)) / Math.min(...sds)));
  const width = (hi - lo) / count;
  const spans = Array.from({ length: count }, (_, j) => {
    const x = lo + (j + 0.5) * width;
    const any = width * anyNumber(x, channel);
    const each = bearers.map((bearer) => massOn(x, bearer, width, channel));
    const wrong = each.reduce((sum, one) => sum + one[1], 0) / each.length;
    return outcome(model, new Float64Array(0), {
      on: (h) => massOn(x, model.trait.values[h] as NumberValue, width, channel),
      any,
      guess: [width * guessed(x, bearers, 0, channel), wrong],
    });
  });
  return [...spans, elsewhere(model, spans)];
}

function massOn(
  x: number,
  bearer: NumberValue,
  width: number,
  channel: NumberChannel,
): readonly [number, number] {
  const [right, wrong] = measuredOn(x, bearer, 0, channel);
  return [right * width, wrong * width];
}

/** A number outside all spans, so that what a look may show adds up to certainty. */
function elsewhere(model: TraitModel, spans: readonly Outcome[]): Outcome {
  const read = new Float64Array(model.channel.other + 1);
  read[model.channel.number] = 1;
  const all = outcome(model, read);
  const left = (whole: Float64Array, part: 'right' | 'wrong') =>
    whole.map((one, h) =>
      Math.max(0, one - spans.reduce((sum, span) => sum + (span[part][h] as number), 0)),
    );
  return { right: left(all.right, 'right'), wrong: left(all.wrong, 'wrong') };
}
