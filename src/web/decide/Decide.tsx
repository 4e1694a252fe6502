import { Link } from '@tanstack/react-router';
import type { ReactNode } from 'react';
import type { Advised, DecideAnswer } from '../../contract/index.ts';
import { useBook } from '../app/context.ts';
import { Marked, Screen } from '../marks/index.ts';
import { shortName } from '../view/index.ts';
import { count } from '../words/index.ts';
import { AsOf } from './AsOf.tsx';
import { Cautions } from './Cautions.tsx';
import { CalendarFile } from './Deadlines.tsx';
import { Plans } from './Plans.tsx';
import { SupposedNote } from './SupposedNote.tsx';
import { nextDeadline, sayAdvice, sayHinge, sayIsoDay, sayLeft, sayStatus } from './tell.ts';
import { useDecided } from './useDecided.ts';

/** Every copy with what is best done with it, then what to send in together and what to buy. */
export function Decide() {
  const { answer, error } = useDecided();
  return (
    <Screen title="Decide" lead={<Lead answer={answer} error={error} />}>
      {error ? (
        <p className="trouble" role="alert">
          {error.message}
        </p>
      ) : null}
      <div className="acts decide-acts">
        <AsOf on={answer?.on ?? null} />
        <CalendarFile />
        <Link to="/listing" className="choice">
          Weigh a listing
        </Link>
      </div>
      <SupposedNote />
      {answer ? (
        <>
          {answer.copies.length === 0 ? null : (
            <ul className="advised">
              {answer.copies.map((copy) => (
                <Row key={copy.id} copy={copy} answer={answer} />
              ))}
            </ul>
          )}
          {answer.on === null ? null : <Plans answer={answer} />}
          <Assumed answer={answer} />
          <Cautions copy={undefined} />
        </>
      ) : null}
    </Screen>
  );
}

interface LeadProps {
  readonly answer: DecideAnswer | undefined;
  readonly error: Error | null;
}

function Lead({ answer, error }: LeadProps): ReactNode {
  if (!answer) return error ? '' : 'Prices are being learned from the sales …';
  if (answer.on === null)
    return 'No sale, sighting, population or rate has a day yet: say for which day to decide.';
  if (answer.copies.length === 0)
    return 'No copy is on the desk yet: lay one on the bench, or weigh a listing.';
  return `${count(answer.copies.length, 'copy', 'copies')}, in ${answer.currency} as of ${sayIsoDay(answer.on)}: what is best done with each, and at what point that turns.`;
}

interface RowProps {
  readonly copy: Advised;
  readonly answer: DecideAnswer;
}

function Row({ copy, answer }: RowProps) {
  const { currency } = answer;
  const deadline = nextDeadline(copy);
  return (
    <li className="advised-copy">
      <div>
        <h2>
          <Link to="/decide/$id" params={{ id: copy.id }}>
            {copy.id}
          </Link>
        </h2>
        <p className="detail">
          <Printings copy={copy} />
        </p>
        <p className="detail">{sayStatus(copy, currency)}</p>
      </div>
      <div>
        <p className="advice">{sayAdvice(copy, currency)}</p>
        <Marked why={sayHinge(copy, currency)} />
      </div>
      <p className="until">
        {deadline ? (
          <>
            <mark>{sayIsoDay(deadline.last)}</mark>
            <span className="detail one-line">
              against the {deadline.against}, {sayLeft(deadline.left)}
            </span>
          </>
        ) : (
          <span className="detail">no deadline</span>
        )}
      </p>
    </li>
  );
}

/** What a copy may be, and in what slab it is. */
export function Printings({ copy }: { readonly copy: Advised }) {
  const book = useBook();
  const { printings, service, grade } = copy;
  const likely = printings.filter(({ p }) => p >= 0.01);
  const names = likely.map(({ id }) => shortName(book, id)).join(' or ');
  return (
    <>
      {names || 'no printing entered'}
      {service === null ? ', raw' : `, ${service} ${grade ?? 'without a grade'}`}
    </>
  );
}

/** What was taken for granted in reckoning. */
export function Assumed({ answer }: { readonly answer: DecideAnswer }) {
  if (answer.assumed.length === 0) return null;
  return (
    <section>
      <h3>Taken for granted</h3>
      {answer.assumed.map((one) => (
        <p key={one} className="detail">
          {one}.
        </p>
      ))}
    </section>
  );
}
