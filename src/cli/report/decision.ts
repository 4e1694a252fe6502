import { sayDay } from '../../evidence/index.ts';
import {
  type Batches,
  type Decision,
  type DeskDecisions,
  digitsOf,
  type HeldCopy,
  type Purchases,
} from '../../market/index.ts';
import type { Called } from './called.ts';
import { amount } from './numbers.ts';
import { type Row, tableOf } from './table.ts';
import { wrapped } from './width.ts';
import { counted, percent } from './words.ts';

/** All that was decided. */
export interface Decided extends DeskDecisions {
  readonly decisions: readonly Decision[];
  readonly batches: Batches;
  readonly purchases: Purchases;
}

const CAUTION =
  'Expectations, no promise of a price or a grade. Duty, tax and refunds go by your own entries: customs, tax advisers, sellers’ terms and local law decide. Deadlines stand at their earliest reading.';

/** Copies with what each way is worth and what is advised, then batches, wants and what was assumed. */
export function* decisionReport(
  decided: Decided,
  called: Called,
  width: number,
): Generator<string> {
  const { ground, decisions, assumed } = decided;
  const { currency, on, copies } = ground;
  yield `${counted(copies.length, 'copy', 'copies')} in ${currency} as of ${sayDay(on)}\n\n`;
  const columns = [
    { head: 'copy' },
    { head: 'landed', align: 'right' },
    { head: 'keep', align: 'right' },
    { head: 'return', align: 'right' },
    { head: 'complain', align: 'right' },
    { head: 'submit adds', align: 'right' },
    { head: 'advice' },
  ] as const;
  const rows = decisions.flatMap((one, i): Row[] => copyRows(one, copies[i] as HeldCopy, called));
  yield tableOf(columns, rows, width);
  yield batchesReport(decided, width);
  yield wantsReport(decided, called, width);
  yield `\n${[...assumed, CAUTION].flatMap((line) => wrapped(line, width)).join('\n')}\n`;
}

const or = (value: number | null) => (value === null ? '–' : amount(value));

function copyRows(one: Decision, { landed, printings, clock }: HeldCopy, called: Called): Row[] {
  const may = printings.map(
    ({ id, p }) => `${called.printing(id)}${p < 1 ? ` (${percent(p)})` : ''}`,
  );
  const deadlines = clock.open.map(
    ({ against, last, left }) =>
      `${against} ${sayDay(last, true)} (${left < 0 ? 'passed' : left === 0 ? 'today' : counted(left, 'day')})`,
  );
  return [
    [
      one.copy,
      'why' in landed ? '–' : digitsOf(landed.total),
      or(one.keep),
      or(one.return),
      or(one.complain),
      one.submit === null
        ? '–'
        : `${amount(one.submit.expectedGain)} ${one.submit.service}, ${one.submit.tier}`,
      one.highestBid === null ? (one.advice ?? '–') : `bid up to ${amount(one.highestBid)}`,
    ],
    may.join(' or ') || 'no printing entered',
    `${capital(one.because)}.`,
    `Hinges on: ${one.hingesOn}.`,
    ...(deadlines.length === 0 ? [] : [`Deadlines: ${deadlines.join(', ')}.`]),
  ];
}

const capital = (text: string) => text.charAt(0).toUpperCase() + text.slice(1);

function batchesReport({ batches, decisions, ground }: Decided, width: number): string {
  const { batches: all, gain, cost, bound } = batches;
  if (all.length === 0) return noBatch(decisions, ground.tiers, width);
  const columns = [{ head: 'service' }, { head: 'tier' }, { head: 'copies' }] as const;
  const rows = all.map(({ service, tier, copies }): Row => [service, tier, copies.join(', ')]);
  const gap =
    bound - gain > 0.005 ? `no choice gains more than ${amount(bound)}` : 'no choice gains more';
  return `\nSend in together\n\n${tableOf(columns, rows, width)}\nExpected to gain ${amount(gain)} ${ground.currency} for ${amount(cost)} in fees and postage; ${gap}.\n`;
}

/** Why nothing is sent in, though a copy may gain by it: its tier wants more copies together. */
function noBatch(
  decisions: readonly Decision[],
  tiers: Decided['ground']['tiers'],
  width: number,
): string {
  const few = decisions.flatMap(({ copy, submit }) => {
    const tier = tiers.find(
      (one) => one.service === submit?.service && one.tier === submit.tier && one.minCopies > 1,
    );
    return tier === undefined
      ? []
      : `what ${copy} may gain is reckoned with its share of a batch, and ${tier.service} (${tier.tier}) takes ${tier.minCopies} copies or more`;
  });
  const text = ['No batch of the copies at hand is expected to gain by being sent in', ...few];
  return `\n${wrapped(`${text.join('; ')}.`, width).join('\n')}\n`;
}

function wantsReport({ wants, purchases, ground }: Decided, called: Called, width: number): string {
  if (wants.length === 0) return '';
  const columns = [
    { head: 'wanted' },
    { head: 'at most', align: 'right' },
    { head: 'may fetch', align: 'right' },
    { head: 'buy' },
  ] as const;
  const rows = wants.map(({ printing, service, grade, most }, w): Row => {
    const price = ground.prices.of
      .get(printing)
      ?.find((one) => one.service === service && one.grade === grade);
    return [
      `${called.printing(printing)}${service === null ? ', raw' : `, ${service} ${grade ?? 'any grade'}`}`,
      or(most),
      price === undefined ? '–' : amount(price.price),
      purchases.bought[w] ?? 'nothing on offer that fits',
    ];
  });
  return `\nWanted\n\n${tableOf(columns, rows, width)}`;
}
