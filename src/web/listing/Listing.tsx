import { useState } from 'react';
import type { ListingAnswer } from '../../contract/index.ts';
import { dayFrom, sayDay } from '../../evidence/index.ts';
import { useDesk } from '../app/context.ts';
import { Cautions } from '../decide/Cautions.tsx';
import { Landed } from '../decide/Landed.tsx';
import { Candidates } from '../identify/Candidates.tsx';
import { Num, Screen } from '../marks/index.ts';
import { useListing } from '../wire/index.ts';
import { sayMoney, sayPercent } from '../words/index.ts';
import { AskFor } from './AskFor.tsx';
import { EMPTY, type ListingDraft, plainListing } from './draft.ts';
import { Keep } from './Keep.tsx';
import { ListingForm } from './ListingForm.tsx';

/** A listing pasted: which printing it can be, what it would cost, and how high a bid may be. */
export function Listing() {
  const { book } = useDesk();
  const [draft, setDraft] = useState(EMPTY);
  const [weighed, weigh] = useState<ListingDraft>();
  const { data, error, isFetching } = useListing(book.dossier.version, weighed);
  return (
    <Screen
      title="Weigh a listing"
      lead="Paste what a seller writes: which printing it can be, which picture to ask for next, what it would cost landed, and the highest sensible bid. Nothing leaves this machine, and nothing is written until you keep it."
    >
      <div className="listing-columns">
        <ListingForm
          draft={draft}
          set={setDraft}
          weigh={() => weigh(plainListing(draft))}
          busy={isFetching}
        />
        <div aria-live="polite">
          {error ? (
            <p className="trouble" role="alert">
              {error.message}
            </p>
          ) : null}
          {data && weighed ? <Answer answer={data} draft={weighed} /> : null}
        </div>
      </div>
    </Screen>
  );
}

interface Props {
  readonly answer: ListingAnswer;
  readonly draft: ListingDraft;
}

function Answer({ answer, draft }: Props) {
  const { currency, identified } = answer;
  return (
    <>
      <Bid answer={answer} there={draft.currency} asked={draft.price} />
      <Keep answer={answer} draft={draft} />
      <AskFor answer={identified} />
      <section>
        <h2>Which printing it can be</h2>
        <Candidates answer={identified} />
      </section>
      <section>
        <h2>What it would cost landed</h2>
        <Landed landed={answer.landed} currency={currency} />
        {answer.assumed.map((one) => (
          <p key={one} className="detail">
            {one}.
          </p>
        ))}
      </section>
      <Cautions copy={undefined} />
    </>
  );
}

interface BidProps {
  readonly answer: ListingAnswer;
  readonly there: string;
  readonly asked: string;
}

function Bid({ answer, there, asked }: BidProps) {
  const { highestBid, highestBidThere, currency, on, landed, expected, interval80 } = answer;
  const inTheirs =
    highestBidThere === null || there === currency
      ? ''
      : `, about ${sayMoney(highestBidThere, there)}`;
  return (
    <>
      <p className="day long">{sayBid(answer)}</p>
      <p className="worth">
        the price alone{inTheirs}; {asked} {there} is asked. As of {sayDay(dayFrom(on))}
      </p>
      <p className="why">
        {'why' in landed
          ? `What it would cost landed cannot be told: ${landed.why}. `
          : `At the price asked it would cost ${sayMoney(Number(landed.total), currency)} landed. `}
        {expected === null || interval80 === null
          ? 'What it may fetch is not known. '
          : `It may fetch ${sayMoney(expected, currency)}, with probability 0.8 between ${sayMoney(interval80[0], currency)} and ${sayMoney(interval80[1], currency)}. `}
        <Regret answer={answer} />
      </p>
      {highestBid === null ? (
        <p className="detail">
          A bid wants a regret_limit in desk/desk.json, a price and a rate of exchange.
        </p>
      ) : null}
    </>
  );
}

function sayBid({ highestBid, currency }: ListingAnswer): string {
  if (highestBid === null) return 'No bid can be told';
  return highestBid === 0 ? 'No bid is low enough' : `Bid up to ${sayMoney(highestBid, currency)}`;
}

/** The chance of regret at the price that is asked, against the limit. */
function Regret({ answer: { pRegret, regretLimit, pFalse } }: { readonly answer: ListingAnswer }) {
  if (pRegret === null) return null;
  const why = `The chance that it is worth less than it costs landed. A known counterfeit or alteration, ${sayPercent(pFalse)}, is taken to be worth nothing; a printing that the dossier does not list is left out.`;
  return (
    <>
      The chance of regret is then{' '}
      <mark>
        <Num why={why}>{sayPercent(pRegret)}</Num>
      </mark>
      {regretLimit === null ? '' : `; your limit is ${sayPercent(regretLimit)}`}.
    </>
  );
}
