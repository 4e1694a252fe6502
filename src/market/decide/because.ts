import { type Day, sayDay } from '../../evidence/index.ts';
import type { Decision, HeldCopy } from './types.ts';

type Decided = Omit<Decision, 'hingesOn' | 'because'>;

/** Why a way is advised, in a sentence or two, with what is not known. */
export function becauseOf(decided: Decided, copy: HeldCopy, currency: string, on: Day): string {
  const said = (value: number) => `${value.toFixed(2)} ${currency}`;
  const parts: string[] = [];
  if (decided.keep === null)
    return copy.status === 'returned' || copy.status === 'sold'
      ? `it was ${copy.status}`
      : `its price is not known: ${copy.service === null ? 'no printing' : `no price of ${copy.service} ${copy.grade ?? 'without a grade'}`}`;
  const as = copy.service === null ? 'raw' : `as ${copy.service} ${copy.grade}`;
  parts.push(`as of ${sayDay(on)} it may fetch ${said(decided.keep)} ${as}`);
  if (decided.return !== null) {
    const until = copy.clock.open.find(({ left }) => left >= 0);
    parts.push(
      `sent back it brings ${said(decided.return)}${until ? `, until ${sayDay(until.last)} (${until.against})` : ''}`,
    );
  }
  if (decided.complain !== null)
    parts.push(`kept with what was offered back it comes to ${said(decided.complain)}`);
  if (decided.equalRefund) parts.push(`${said(decided.equalRefund)} back would make keeping equal`);
  if (decided.submit !== null) {
    const { service, tier, expectedGain } = decided.submit;
    const option = decided.options.find((one) => one.service === service && one.tier === tier);
    const by =
      option?.by === 'examination'
        ? 'by its examination'
        : 'by the population’s shares of grades, which flatter';
    parts.push(
      `${service} (${tier}) is expected to add ${said(expectedGain)} ${by}${option ? `, with a chance of ${Math.round(100 * option.pLoss)} % to lose by it` : ''}`,
    );
    if (option?.ungraded)
      parts.push(
        `${Math.round(100 * option.ungraded.p)} % of entries there are no grade, which would cost ${said(option.ungraded.cost)}`,
      );
  } else if (decided.options.length > 0)
    parts.push('no tier is expected to add more than it costs');
  if ('why' in copy.landed) parts.push(`its landed cost is not known: ${copy.landed.why}`);
  return parts.join('; ');
}
