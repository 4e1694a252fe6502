import { Fragment } from 'react';
import type { CountingService, PopulationAnswer, WirePrintingCount } from '../../contract/index.ts';
import { useBook } from '../app/context.ts';
import { Num, PrintingLink } from '../marks/index.ts';
import { lanesOf, NO_FILTER, shortName } from '../view/index.ts';
import { CourseFigure } from './CourseFigure.tsx';
import { explainTotal, sayTotal } from './tell.ts';

/** Printings drawn at once; more are shown when asked for. */
const AT_ONCE = 60;

/** A small figure for each printing, in order of release: its graded copies over time. */
export function Courses({ population }: { readonly population: PopulationAnswer }) {
  const book = useBook();
  const { services, printings, falls } = population;
  const byId = new Map(printings.map((one) => [one.id, one]));
  const order = lanesOf(book, NO_FILTER).flatMap((id) => byId.get(id) ?? []);
  const listed = order.filter((one) => one.services.length > 0);
  const none = order.filter((one) => one.services.length === 0);
  const days = services.flatMap(({ reports }) => reports.map(({ day }) => day));
  const span = [Math.min(...days), Math.max(...days)] as const;
  return (
    <section>
      <h2>Graded copies over time</h2>
      <ServiceLegend services={services} />
      <ul className="panels">
        {listed.slice(0, AT_ONCE).map((one) => (
          <li key={one.id}>
            <h3>
              <span>
                <PrintingLink id={one.id} />
              </span>
            </h3>
            <CourseFigure
              {...{ counts: one.services, services, falls, days: span }}
              label={`Graded copies of ${shortName(book, one.id)} at each report.`}
            />
            <Totals one={one} services={services} />
          </li>
        ))}
      </ul>
      {listed.length > AT_ONCE ? (
        <p className="detail">
          {listed.length - AT_ONCE} more stand on the pages of their printings.
        </p>
      ) : null}
      {none.length > 0 ? (
        <p className="detail">
          Listed by no service:{' '}
          {none.map(({ id }, at) => (
            <Fragment key={id}>
              {at > 0 ? ', ' : ''}
              <PrintingLink id={id} />
            </Fragment>
          ))}
          .
        </p>
      ) : null}
    </section>
  );
}

interface TotalsProps {
  readonly one: WirePrintingCount;
  readonly services: readonly CountingService[];
}

/** What each service has counted by now, or that it does not list the printing. */
export function Totals({ one, services }: TotalsProps) {
  const book = useBook();
  return (
    <ul className="totals">
      {services.map(({ id, title }) => {
        const found = one.services.find(({ service }) => service === id);
        return (
          <li key={id}>
            <span>{title}</span>
            {found ? (
              <Num why={explainTotal(found, title, (other) => shortName(book, other))}>
                {sayTotal(found)}
              </Num>
            ) : (
              <span className="detail">not listed</span>
            )}
          </li>
        );
      })}
    </ul>
  );
}

/** How the services' lines are told apart, and what the other marks mean. */
export function ServiceLegend({ services }: { readonly services: readonly CountingService[] }) {
  return (
    <div className="legend">
      {services.map(({ id, title }, at) => (
        <div key={id}>
          <svg className="axis" width="34" height="10" viewBox="0 0 34 10" aria-hidden="true">
            <g className={`service s${at % 3}`}>
              <path className="line" d="M0 5H34" />
              <circle className="dot" cx="17" cy="5" r="2.2" />
            </g>
          </svg>
          {title}
        </div>
      ))}
      <div>
        <svg className="axis" width="22" height="12" viewBox="0 0 22 12" aria-hidden="true">
          <g className="service">
            <path className="doubt" d="M0 1H22V11H0z" />
          </g>
        </svg>
        estimated share of a label that holds several, 95 %
      </div>
      <div>
        <svg className="axis" width="12" height="12" viewBox="0 0 12 12" aria-hidden="true">
          <path className="slips" d="M2 2l8 8m0 -8l-8 8" />
        </svg>
        a count fell, which grading alone cannot do
      </div>
    </div>
  );
}
