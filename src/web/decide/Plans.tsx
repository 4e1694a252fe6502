import { Link } from '@tanstack/react-router';
import type { DecideAnswer, Plans as WirePlans } from '../../contract/index.ts';
import { useBook } from '../app/context.ts';
import { shortName } from '../view/index.ts';
import { usePlans } from '../wire/index.ts';
import { sayMoney } from '../words/index.ts';
import { Budget } from './Budget.tsx';
import { useAsked } from './supposed.ts';

/** What to send in together and what to buy, each within the budget. */
export function Plans({ answer }: { readonly answer: DecideAnswer }) {
  const { version } = useBook().dossier;
  const [{ on, budget, supposed }] = useAsked();
  const request = { budget, supposed, ...(on === undefined ? {} : { on }) };
  const { data, error } = usePlans(version, request);
  return (
    <section>
      <h2>Send in together, and buy next</h2>
      <Budget currency={answer.currency} />
      {error ? (
        <p className="trouble" role="alert">
          {error.message}
        </p>
      ) : null}
      {data ? (
        <div className="plans">
          <Batches plans={data} answer={answer} />
          <Purchases plans={data} answer={answer} />
        </div>
      ) : null}
    </section>
  );
}

interface Props {
  readonly plans: WirePlans;
  readonly answer: DecideAnswer;
}

function Batches({ plans: { batches, batchesPlan }, answer }: Props) {
  const { currency } = answer;
  if (batches.length === 0)
    return (
      <div>
        <p className="empty">No batch is expected to gain by being sent in.</p>
        {sayWaiting(answer).map((one) => (
          <p key={one} className="detail">
            {one}
          </p>
        ))}
      </div>
    );
  const { gain, cost, atMost } = batchesPlan;
  return (
    <div>
      <ul className="rows">
        {batches.map(({ service, tier, copies }) => (
          <li key={`${service} ${tier}`}>
            <span>
              {service}, {tier}
            </span>
            <span>
              {copies.map((id, i) => (
                <span key={id}>
                  {i > 0 ? ', ' : ''}
                  <Link to="/decide/$id" params={{ id }}>
                    {id}
                  </Link>
                </span>
              ))}
            </span>
          </li>
        ))}
      </ul>
      <p className="detail">
        Expected to gain {sayMoney(gain, currency)} for {sayMoney(cost, currency)} in fees and
        postage; {sayGap(gain, atMost, 'gains', currency)}.
      </p>
    </div>
  );
}

/** Copies that would gain in a batch with others, which is not there yet. */
function sayWaiting({ copies, tiers }: DecideAnswer): readonly string[] {
  return copies.flatMap(({ id, advice, submit }) => {
    if (advice !== 'submit' || submit === null) return [];
    const { service, tier } = submit;
    const least = tiers.find((one) => one.service === service && one.tier === tier)?.minCopies ?? 1;
    return least > 1
      ? [
          `${id} would gain as one of ${least} sent to ${service}, ${tier}, the fewest that it takes: it waits for others.`,
        ]
      : [];
  });
}

function Purchases({ plans: { bought, purchasesPlan }, answer }: Props) {
  const book = useBook();
  const { currency, wants } = answer;
  const pairs = wants.flatMap((want, w) => {
    const copy = bought[w];
    return copy ? [{ want, copy }] : [];
  });
  if (pairs.length === 0)
    return (
      <p className="empty">
        Nothing on offer is what <Link to="/wants">you want</Link> at your price.
      </p>
    );
  const { saved, cost, atMost } = purchasesPlan;
  return (
    <div>
      <ul className="rows">
        {pairs.map(({ want, copy }) => (
          <li key={copy}>
            <span>{shortName(book, want.printing)}</span>
            <Link to="/decide/$id" params={{ id: copy }}>
              {copy}
            </Link>
          </li>
        ))}
      </ul>
      <p className="detail">
        {sayMoney(cost, currency)} landed, {sayMoney(saved, currency)} under your limits;{' '}
        {sayGap(saved, atMost, 'saves', currency)}.
      </p>
    </div>
  );
}

/** How far from the best a choice may be. */
function sayGap(found: number, atMost: number, verb: string, currency: string): string {
  return atMost - found > 0.005
    ? `no choice ${verb} more than ${sayMoney(atMost, currency)}`
    : `no choice ${verb} more`;
}
