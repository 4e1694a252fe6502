import type { NumberValue } from '../traits/value.ts';
import { inMeasure, type TraitValue } from '../traits/value.ts';
import { type Look, lookKind } from './looks.ts';
import { asWritten, type Marks } from './marks.ts';
import {
  anyNumber,
  guessed as guessedNumber,
  measuredOn,
  type NumberChannel,
  numberChannel,
  sdOfValue,
} from './number-channel.ts';
import type { Reading, Trait } from './types.ts';
import { stateOf, type WordChannel, wordChannel, writtenAs } from './word-channel.ts';

/** One thing that may be read, and how likely each hypothesis makes it. */
export interface Outcome {
  /** By hypothesis: where the trait is read rightly, and where it is misread. */
  readonly right: Float64Array;
  readonly wrong: Float64Array;
}

/** A trait with all that is needed to say how likely a reading is. */
export interface TraitModel {
  readonly trait: Trait;
  readonly channel: WordChannel;
  readonly numbers: NumberChannel | undefined;
  /** By hypothesis: where in the channel its value stands; −1: not known. */
  readonly states: Int32Array;
  /** Chances of the states where the value is not known: of a listed printing, and of another. */
  readonly unknown: Float64Array;
  readonly unlisted: Float64Array;
}

/** Printings that stand for `none` and for something new, where a value is not known. Judgement, no source. */
const LACKING = { often: 0.5, seldom: 0.1 } as const;
const NEW = 0.3;
/** Share of the traits of a printing that nobody listed which no listed one shows. Judgement, no source. */
const STRANGE = 0.3;

/** The model of a trait over the hypotheses. */
export function traitModel(trait: Trait, { hypotheses }: Pick<Marks, 'hypotheses'>): TraitModel {
  const lacking = mayLack(trait, hypotheses);
  const channel = wordChannel(trait.values, lacking);
  const states = Int32Array.from(trait.values, (value) => (value ? stateOf(value, channel) : -1));
  // Laplace's rule: each value that is shown counts once more.
  const counts = Float64Array.from({ length: channel.other + 1 }, (_, v) =>
    v < channel.none ? 1 : 0,
  );
  hypotheses.forEach(({ kind }, h) => {
    const state = states[h] as number;
    if (kind === 'printing' && state >= 0) counts[state] = (counts[state] as number) + 1;
  });
  counts[channel.other] = (counts[channel.other] as number) + NEW;
  counts[channel.none] =
    (counts[channel.none] as number) + (lacking ? LACKING.often : LACKING.seldom);
  const unknown = shares(counts);
  const unlisted = unknown.map((one) => one * (1 - STRANGE));
  unlisted[channel.other] = (unlisted[channel.other] as number) + STRANGE;
  const numbers = numberChannel(trait.values);
  return { trait, channel, numbers, states, unknown, unlisted };
}

/** A printing is known to have none, or two in three have no row: what all have would be told of most. */
function mayLack({ values }: Trait, hypotheses: Marks['hypotheses']): boolean {
  const ofPrintings = values.filter((_, h) => hypotheses[h]?.kind === 'printing');
  const known = ofPrintings.filter((value) => value !== undefined);
  return known.some(({ is }) => is === 'none') || 3 * known.length < ofPrintings.length;
}

/** What a reading says; undefined where it is a number of another measure than the trait's. */
export function outcomeOf(reading: Reading, model: TraitModel): Outcome | undefined {
  const { trait } = model;
  const written = asWritten(reading.value, trait);
  const value = trait.measure === null ? written : inMeasure(written, trait.measure);
  if (value.is !== 'number' || trait.measure === null) {
    return outcome(model, wordsRead(value, model.channel));
  }
  if (value.measure !== trait.measure) return undefined;
  const extra = extraSd(reading, value, trait, reading.sees ?? trait.look);
  return outcome(model, NOTHING, numberRead(model, value.value, extra));
}

/** A measured number: its density on each hypothesis that shows one, and on any that does. */
interface NumberRead {
  readonly on: (h: number) => readonly [right: number, wrong: number];
  readonly any: number;
  /** On a bearer whose number is not known. */
  readonly guess: readonly [right: number, wrong: number];
}

const NOTHING = new Float64Array(0);

/** How likely each hypothesis makes what was perceived as `read`, by state, or as a number. */
export function outcome(model: TraitModel, read: Float64Array, number?: NumberRead): Outcome {
  const { channel, states, unknown, unlisted } = model;
  const size = channel.other + 1;
  const right = new Float64Array(size);
  const wrong = new Float64Array(size);
  for (let v = 0; v < size; v++) {
    right[v] = read[v] ?? 0;
    const row = channel.misread[v] as Float64Array;
    for (let u = 0; u < size; u++)
      wrong[v] = (wrong[v] as number) + (row[u] as number) * (read[u] ?? 0);
    if (number) wrong[v] = (wrong[v] as number) + (row[channel.number] as number) * number.any;
  }
  const ofNumber = (channel.misread[channel.number] as Float64Array)[channel.number] as number;
  if (number) {
    right[channel.number] = number.guess[0];
    wrong[channel.number] = ofNumber * number.guess[1];
  }
  const guessed = (chances: Float64Array) => [dot(chances, right), dot(chances, wrong)] as const;
  const [ofKnown, ofOther] = [guessed(unknown), guessed(unlisted)];
  const last = states.length - 1;
  const all = Array.from(states, (state, h): readonly [number, number] => {
    if (state < 0) return h === last ? ofOther : ofKnown;
    if (state !== channel.number || !number)
      return [right[state] as number, wrong[state] as number];
    const [well, badly] = number.on(h);
    return [well, ofNumber * badly];
  });
  return { right: Float64Array.from(all, ([p]) => p), wrong: Float64Array.from(all, ([, p]) => p) };
}

function dot(a: Float64Array, b: Float64Array): number {
  return a.reduce((sum, one, i) => sum + one * (b[i] as number), 0);
}

function wordsRead(value: TraitValue, channel: WordChannel): Float64Array {
  if (value.is === 'word') return writtenAs(value.word, channel);
  const read = new Float64Array(channel.other + 1);
  read[value.is === 'none' ? channel.none : channel.other] = 1;
  return read;
}

function numberRead(model: TraitModel, seen: number, extra: number): NumberRead {
  const channel = model.numbers as NumberChannel;
  const bearers = model.trait.values.filter((one): one is NumberValue => one?.is === 'number');
  const any = anyNumber(seen, channel);
  const each = bearers.map((bearer) => measuredOn(seen, bearer, extra, channel));
  const wrong = each.reduce((sum, one) => sum + one[1], 0) / each.length;
  return {
    on: (h) => measuredOn(seen, model.trait.values[h] as NumberValue, extra, channel),
    any,
    guess: [guessedNumber(seen, bearers, extra, channel), wrong],
  };
}

/** The tolerance of a trait holds the error of the look that it names; another adds its own. */
function extraSd(reading: Reading, value: NumberValue, trait: Trait, look: Look): number {
  const rounding = value.rounding / Math.sqrt(3);
  if (reading.sd !== null) return Math.hypot(reading.sd, rounding);
  if (value.tolerance !== null) return sdOfValue(value);
  const error = look === trait.look ? 0 : (lookKind(look).error[value.measure] ?? 0);
  return Math.hypot(error, rounding);
}

function shares(counts: Float64Array): Float64Array {
  const sum = counts.reduce((all, one) => all + one, 0);
  return counts.map((one) => one / sum);
}
