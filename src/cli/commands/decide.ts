import { deskIn } from '../../dossier/index.ts';
import { isoOf } from '../../evidence/index.ts';
import {
  bestBatches,
  bestPurchases,
  type Decision,
  deadlinesCalendar,
  decide as decideAll,
  decisionsOn,
  digitsOf,
  pricesOf,
} from '../../market/index.ts';
import { writeJson } from '../json.ts';
import { pricedIn } from '../priced.ts';
import { calledIn } from '../report/called.ts';
import { type Decided, decisionReport } from '../report/decision.ts';
import type { Terminal } from '../terminal.ts';
import { writeAsked } from '../written.ts';

/** What `decide` was called with. */
export interface DecideOptions {
  readonly json?: boolean;
  readonly on?: string;
  readonly budget?: number;
  readonly calendar?: string;
  readonly seed?: number;
}

/**
 * Says what to do with each copy, what to send in together and what to buy; faults are listed on
 * standard error and answered by 1. Writes nothing but a calendar where one is asked for.
 */
export async function decide(
  folder: string,
  { json = false, on, budget, calendar, seed = 1 }: DecideOptions,
  terminal: Terminal,
): Promise<0 | 1> {
  const { dossier, found } = await pricedIn(folder, on, terminal);
  const { evidence, faults } = dossier;
  const from = decisionsOn(deskIn(dossier, found), pricesOf(found.ground, seed));
  const decisions = decideAll(from.ground, from.bids);
  const decided: Decided = {
    ...from,
    decisions,
    batches: await bestBatches(decisions, from.ground.tiers, budget ?? null),
    purchases: await bestPurchases(from.wants, from.offers, budget ?? null),
    assumed: [...found.assumed, ...from.assumed],
  };
  const called = calledIn(evidence);
  if (calendar !== undefined)
    await writeAsked(calendar, deadlinesCalendar(from.ground, called.printing));
  if (json) await writeJson(answerOf(decided, seed), terminal);
  else
    for (const part of decisionReport(decided, called, terminal.width)) await terminal.write(part);
  return faults.length === 0 ? 0 : 1;
}

function answerOf(
  { ground, decisions, batches, wants, purchases, assumed }: Decided,
  seed: number,
): object {
  return {
    currency: ground.currency,
    on: isoOf(ground.on),
    seed,
    copies: decisions.map((one, i) => copyAnswer(one, ground.copies[i]!)),
    batches: batches.batches,
    batches_plan: { gain: batches.gain, cost: batches.cost, at_most: batches.bound },
    wants: wants.map(({ printing, service, grade, most }, w) => ({
      printing,
      service,
      grade,
      max_price: most,
      buy: purchases.bought[w],
    })),
    wants_plan: { cost: purchases.cost, saved: purchases.saved, at_most: purchases.bound },
    assumed,
  };
}

function copyAnswer(one: Decision, { landed, clock }: Decided['ground']['copies'][number]): object {
  return {
    id: one.copy,
    landed_cost: 'why' in landed ? null : digitsOf(landed.total),
    lines:
      'why' in landed
        ? []
        : landed.lines.map(({ name, share, how }) => ({ name, amount: digitsOf(share), how })),
    assumed: 'why' in landed ? [landed.why] : landed.assumed,
    keep: one.keep,
    return: one.return,
    complain: one.complain,
    sell: one.sell,
    equal_refund: one.equalRefund,
    submit: one.submit && {
      service: one.submit.service,
      tier: one.submit.tier,
      expected_gain: one.submit.expectedGain,
    },
    options: one.options.map((option) => ({
      service: option.service,
      tier: option.tier,
      expected_gain: option.expectedGain,
      spread: option.spread,
      p_loss: option.pLoss,
      postage_share: option.postageShare,
      upcharge: option.upcharge,
      ungraded: option.ungraded,
      days: option.days,
      by: option.by,
      outcomes: option.outcomes,
    })),
    advice: one.advice,
    highest_bid: one.highestBid,
    hinges_on: one.hingesOn,
    because: one.because,
    deadlines: clock.open.map(({ against, startsFrom, startsOn, days, counts, last, left }) => ({
      against,
      starts_from: startsFrom,
      starts_on: startsOn,
      days,
      counts,
      last: isoOf(last),
      left,
    })),
  };
}
