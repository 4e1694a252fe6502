import type { Advised, DecideAnswer } from '../../contract/index.ts';
import { dayFrom, sayDay } from '../../evidence/index.ts';
import { capital, count, sayMoney } from '../words/index.ts';

/** What is advised, in a few words. */
export function sayAdvice(copy: Advised, currency: string): string {
  const { advice, highestBid, submit, status } = copy;
  if (status === 'offered')
    return highestBid === null
      ? 'No bid can be told'
      : highestBid === 0
        ? 'No bid is low enough'
        : `Bid up to ${sayMoney(highestBid, currency)}`;
  if (advice === 'submit' && submit) return `Submit to ${submit.service}, ${submit.tier}`;
  if (advice === 'return') return 'Send it back';
  if (advice === 'complain') return 'Keep it, and take what was offered back';
  if (advice === 'keep') return 'Keep it';
  return status === 'sold' || status === 'returned'
    ? `Nothing to decide: it was ${status}`
    : 'Nothing can be advised yet';
}

/** The turning point, its deciding words between asterisks. */
export function sayHinge(copy: Advised, currency: string): string {
  const { hingesOn } = copy;
  const over = overBid(copy);
  if (over !== null && copy.asked !== null) {
    const { price, currency: theirs } = copy.asked;
    const asked = joined(`${price} ${theirs} is asked`);
    return over > 0
      ? `${asked}, *${joined(sayMoney(over, currency))} more than that*.`
      : `${asked}: *within it*.`;
  }
  const [what, at] = joined(hingesOn).split(/ (?=if )/);
  if (at === undefined) return `Hinges on ${joined(hingesOn)}.`;
  const [condition, ...rest] = at.split('; ');
  return `${capital(what ?? '')} *${condition}*${rest.map((one) => `; ${one}`).join('')}.`;
}

/** By how much what is asked for an offered copy is over the highest bid; null where not known. */
function overBid({ status, highestBid, landed }: Advised): number | null {
  if (status !== 'offered' || highestBid === null || 'why' in landed) return null;
  const price = landed.lines.find(({ name }) => name === 'price');
  return price ? Number(price.share) - highestBid : null;
}

/** Numbers stay beside their unit at the end of a line. */
export function joined(sentence: string): string {
  return sentence.replace(/(\d) (%|[A-Z]{3}\b)/g, '$1\u00a0$2');
}

/** A way in words: `sell it raw`, `ostrel, plain`. */
export function sayWay({ way, service, tier }: Advised['ways'][number], isRaw: boolean): string {
  if (way === 'submit') return `Submit: ${service}, ${tier}`;
  const names = {
    keep: 'Keep',
    return: 'Return',
    complain: 'Take the offered part back',
    sell: isRaw ? 'Sell raw' : 'Sell as it is',
  } as const;
  return names[way];
}

/** The chances of an option's grades against what a way is worth: what its number rests on. */
export function whyWorth(
  { way, worth, interval80: [low, high] }: Advised['ways'][number],
  { currency, on }: Pick<DecideAnswer, 'currency' | 'on'>,
): string {
  const asOf = on === null ? '' : ` As of ${sayDay(dayFrom(on))}.`;
  const spread =
    low === high
      ? 'By the terms that you entered.'
      : `With probability 0.8 between ${sayMoney(low, currency)} and ${sayMoney(high, currency)}, odd sales included.`;
  const basis = {
    keep: 'Median of what it may fetch, over the printings that it may be.',
    return: 'The price that was paid, less what sending it back costs.',
    complain: 'What it may fetch, and what was offered back beside.',
    sell: 'What it may fetch, less the share that selling costs.',
    submit:
      'What it may fetch at each grade by its chance, less the fee and its share of a batch’s postage.',
  }[way];
  return `${sayMoney(worth, currency)}: ${basis} ${spread}${asOf}`;
}

/** A status in the words of a sentence. */
export function sayStatus(copy: Advised, currency: string): string {
  const { status, landed, asked } = copy;
  const price = asked === null ? '' : ` for ${asked.price} ${asked.currency}`;
  const cost = 'why' in landed ? '' : `, ${landed.total} ${currency} landed`;
  if (status === 'offered') return `offered${price}${cost}`;
  return `${status}${cost}`;
}

/** The deadline that comes first, of those that have not passed. */
export function nextDeadline({ deadlines }: Advised): Advised['deadlines'][number] | undefined {
  return deadlines.find(({ left }) => left >= 0);
}

/** How long there is, in words. */
export function sayLeft(left: number): string {
  if (left < 0) return 'has passed';
  return left === 0 ? 'ends that day' : `${count(left, 'day')} left`;
}

/** A day as people say it. */
export function sayIsoDay(iso: string): string {
  return sayDay(dayFrom(iso));
}

/** What has to be said with every advice, and with this one. */
export function cautionsOf(copy: Advised | undefined): readonly string[] {
  const own: string[] = [];
  if (copy?.options.some(({ by }) => by === 'population'))
    own.push('The population’s shares of grades flatter: people send in their best copies.');
  if (copy?.status === 'offered')
    own.push(
      'Asking prices are no sales. Ask for the picture that would tell most before you bid; a slab and its number are no proof by themselves.',
    );
  if (copy?.ways.some(({ way }) => way === 'return'))
    own.push(
      'Agree a return first and send it tracked; keep the wrapping, break no seal or case, and leave the original pictures as they are.',
    );
  return [
    ...own,
    'Expectations, no promise of a price or a grade.',
    'Duty, tax and refunds go by your own entries: customs, tax advisers, sellers’ terms and local law decide.',
    'Deadlines stand at their earliest reading.',
  ];
}
