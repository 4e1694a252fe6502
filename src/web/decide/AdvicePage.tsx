import { Link, useParams } from '@tanstack/react-router';
import type { Advised, DecideAnswer } from '../../contract/index.ts';
import { Marked, Num, Screen } from '../marks/index.ts';
import { capital, sayMoney, sayPercent } from '../words/index.ts';
import { Cautions } from './Cautions.tsx';
import { Deadlines } from './Deadlines.tsx';
import { Assumed, Printings } from './Decide.tsx';
import { Landed } from './Landed.tsx';
import { Outcomes } from './Outcomes.tsx';
import { SupposedNote } from './SupposedNote.tsx';
import { joined, sayAdvice, sayHinge, sayIsoDay, sayStatus } from './tell.ts';
import { useDecided } from './useDecided.ts';
import { Ways } from './Ways.tsx';
import { WhatIf } from './WhatIf.tsx';

/** One copy: what is best done with it, why, by when, and what would change the answer. */
export function AdvicePage() {
  const { id } = useParams({ from: '/decide/$id' });
  const { answer, error } = useDecided();
  const copy = answer?.copies.find((one) => one.id === id);
  if (!answer || !copy) {
    return (
      <Screen
        title={id}
        lead={
          answer ? 'There is no copy of this id on the desk.' : (error?.message ?? 'One moment …')
        }
      >
        <Link to="/decide">All copies</Link>
      </Screen>
    );
  }
  return (
    <Screen
      title={id}
      lead={
        <>
          <Printings copy={copy} />. {capital(sayStatus(copy, answer.currency))}.
        </>
      }
    >
      <div className="advice-columns">
        <div>
          <SupposedNote />
          <Advice copy={copy} answer={answer} />
        </div>
        <WhatIf copy={copy} answer={answer} />
      </div>
    </Screen>
  );
}

interface Props {
  readonly copy: Advised;
  readonly answer: DecideAnswer;
}

function Advice({ copy, answer }: Props) {
  const { currency } = answer;
  return (
    <>
      <p className="day long">{sayAdvice(copy, currency)}</p>
      {answer.on === null ? null : <p className="worth">as of {sayIsoDay(answer.on)}</p>}
      <Marked why={`${sayHinge(copy, currency)} ${capital(joined(copy.because))}.`} />
      <Equal copy={copy} answer={answer} />
      <section>
        <h2>The ways side by side</h2>
        {copy.ways.length === 0 ? (
          <p className="empty">No way can be told: a price is missing.</p>
        ) : (
          <Ways copy={copy} answer={answer} />
        )}
      </section>
      {copy.options.length > 0 ? <Outcomes copy={copy} answer={answer} /> : null}
      <section>
        <h2>Landed cost</h2>
        <Landed landed={copy.landed} currency={currency} />
      </section>
      <section>
        <h2>Deadlines</h2>
        <Deadlines copy={copy} />
      </section>
      <Assumed answer={answer} />
      <Cautions copy={copy} />
    </>
  );
}

/** What a bid comes to in the seller's money, or what must come back for keeping to equal returning. */
function Equal({ copy, answer }: Props) {
  const { equalRefund, highestBid, keep, asked } = copy;
  const { currency, regretLimit } = answer;
  if (highestBid !== null && keep !== null) {
    const there = asked && inTheirs(highestBid, asked.currency, answer);
    return (
      <p className="detail">
        The price alone{there ? `, about ${sayMoney(there, asked.currency)}` : ''}.{' '}
        <Num why="The chance that it is worth less than it costs landed stays at or under this: the regret_limit of desk/desk.json.">
          {sayPercent(regretLimit ?? 0)} chance of regret
        </Num>
        .
      </p>
    );
  }
  if (!equalRefund || keep === null) return null;
  return (
    <p className="detail">
      {sayMoney(equalRefund, currency)} back would make keeping equal to returning
      {keep > 0 ? `, ${sayPercent(equalRefund / keep)} of what it may fetch` : ''}.
    </p>
  );
}

/** An amount of the desk in another currency at the rate of the day; null without a rate. */
function inTheirs(amount: number, other: string, { currency, rates }: DecideAnswer): number | null {
  const perEur = (code: string) =>
    code === 'EUR' ? 1 : Number(rates.find((rate) => rate.currency === code)?.perEur);
  const there = (amount * perEur(other)) / perEur(currency);
  return other === currency || Number.isNaN(there) ? null : there;
}
