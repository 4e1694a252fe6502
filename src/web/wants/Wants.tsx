import { Link } from '@tanstack/react-router';
import { useState } from 'react';
import type { DecideAnswer, Wanted } from '../../contract/index.ts';
import { useDesk } from '../app/context.ts';
import { AsOf } from '../decide/AsOf.tsx';
import { Budget } from '../decide/Budget.tsx';
import { SupposedNote } from '../decide/SupposedNote.tsx';
import { useAsked } from '../decide/supposed.ts';
import { sayIsoDay } from '../decide/tell.ts';
import { useDecided } from '../decide/useDecided.ts';
import { Num, PrintingLink, Screen } from '../marks/index.ts';
import { shortName } from '../view/index.ts';
import { usePlans } from '../wire/index.ts';
import { sayAmount, sayMoney, sayPercent } from '../words/index.ts';
import { noWantStep } from './draft.ts';
import { WantForm } from './WantForm.tsx';

/** What is still looked for, where it stands against prices, and what to buy next. */
export function Wants() {
  const { answer, error } = useDecided();
  const [editing, edit] = useState<Wanted | 'new'>();
  return (
    <Screen title="Wants" lead={answer ? sayLead(answer) : (error?.message ?? 'One moment …')}>
      <div className="acts decide-acts">
        <AsOf on={answer?.on ?? null} />
        <button type="button" className="choice" onClick={() => edit('new')}>
          Add a want
        </button>
      </div>
      <SupposedNote />
      {answer && editing ? (
        <WantForm
          key={editing === 'new' ? 'new' : editing.row}
          want={editing === 'new' ? undefined : editing}
          currency={answer.currency}
          done={() => edit(undefined)}
        />
      ) : null}
      {answer && answer.wants.length > 0 ? (
        <>
          <Budget currency={answer.currency} />
          <List answer={answer} edit={edit} />
        </>
      ) : null}
    </Screen>
  );
}

function sayLead({ wants, on, currency }: DecideAnswer): string {
  if (wants.length === 0) return 'Nothing is on the list yet.';
  const asOf = on === null ? '' : `, in ${currency} as of ${sayIsoDay(on)}`;
  return `What is still looked for${asOf}: the most that it may cost you landed, beside what the next one may fetch.`;
}

interface Props {
  readonly answer: DecideAnswer;
  readonly edit: (want: Wanted) => void;
}

function List({ answer, edit }: Props) {
  const { book } = useDesk();
  const [{ on, budget, supposed }] = useAsked();
  const request = { budget, supposed, ...(on === undefined ? {} : { on }) };
  const { data } = usePlans(book.dossier.version, request);
  return (
    <>
      <div className="wide">
        <table className="list wants">
          <thead>
            <tr>
              <th scope="col">Wanted</th>
              <th scope="col" className="figure">
                At most
              </th>
              <th scope="col" className="figure">
                May fetch
              </th>
              <th scope="col" className="figure">
                80 % between
              </th>
              <th scope="col" className="figure">
                At or under
              </th>
              <th scope="col">Buy next</th>
              <th scope="col">
                <span className="unseen">Change</span>
              </th>
            </tr>
          </thead>
          <tbody>
            {answer.wants.map((want, w) => (
              <Row
                key={`${want.row} ${want.printing}`}
                want={want}
                buy={data?.bought[w] ?? null}
                edit={edit}
              />
            ))}
          </tbody>
        </table>
      </div>
      {data ? <Plan plan={data.purchasesPlan} currency={answer.currency} /> : null}
      <p className="detail">
        “At or under”: the chance that the next sale fetches no more than your limit; what it costs
        to land comes on top. No promise of a price.
      </p>
    </>
  );
}

function Plan({
  plan: { cost, saved, atMost },
  currency,
}: {
  readonly plan: { readonly cost: number; readonly saved: number; readonly atMost: number };
  readonly currency: string;
}) {
  if (cost === 0) return <p className="detail planned">Nothing on offer fits at your price.</p>;
  const gap =
    atMost - saved > 0.005
      ? `no choice saves more than ${sayMoney(atMost, currency)}`
      : 'no choice saves more';
  return (
    <p className="detail planned">
      {sayMoney(cost, currency)} landed, {sayMoney(saved, currency)} under your limits; {gap}.
    </p>
  );
}

interface RowProps {
  readonly want: Wanted;
  readonly buy: string | null;
  readonly edit: (want: Wanted) => void;
}

function Row({ want, buy, edit }: RowProps) {
  const { book } = useDesk();
  const { printing, service, grade, most, price, pUnder, cells } = want;
  const name = shortName(book, printing);
  return (
    <tr>
      <th scope="row">
        <PrintingLink id={printing} />
        <span className="detail one-line">
          {service === null ? 'raw' : `${service} ${grade ?? 'any grade'}`}
          {cells.note ? `; ${cells.note}` : ''}
        </span>
      </th>
      <td className="figure" data-head="at most">
        {most === null ? '–' : sayAmount(most)}
      </td>
      <td className="figure" data-head="may fetch">
        {price === null ? (
          '–'
        ) : (
          <Num
            why={`Median of the next sale, learned from ${price.sales} of this very kind and all the others.`}
          >
            {sayAmount(price.price)}
          </Num>
        )}
      </td>
      <td className="figure" data-head="80 % between">
        {price ? price.interval80.map(sayAmount).join(' and ') : '–'}
      </td>
      <td className="figure" data-head="at or under">
        {pUnder === null ? '–' : sayPercent(pUnder)}
      </td>
      <td data-head="buy next">
        {buy === null ? (
          <span className="detail">nothing on offer fits</span>
        ) : (
          <Link to="/decide/$id" params={{ id: buy }}>
            {buy}
          </Link>
        )}
      </td>
      <td>
        <Acts want={want} name={name} edit={edit} />
      </td>
    </tr>
  );
}

interface ActsProps {
  readonly want: Wanted;
  readonly name: string;
  readonly edit: (want: Wanted) => void;
}

function Acts({ want, name, edit }: ActsProps) {
  const { change } = useDesk();
  return (
    <span className="acts">
      <button
        type="button"
        className="plain"
        aria-label={`Change ${name}`}
        onClick={() => edit(want)}
      >
        Change
      </button>
      <button
        type="button"
        className="plain"
        aria-label={`Take ${name} off the list`}
        onClick={() => change(noWantStep(want, name))}
      >
        Take off
      </button>
    </span>
  );
}
