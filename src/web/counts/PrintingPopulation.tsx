import { Link } from '@tanstack/react-router';
import type {
  CountingService,
  PopulationAnswer,
  WirePrintingCount,
  WireServiceCount,
} from '../../contract/index.ts';
import { dayFrom, sayDay } from '../../evidence/index.ts';
import { useBook } from '../app/context.ts';
import { Num } from '../marks/index.ts';
import { useHistories, usePopulation } from '../wire/index.ts';
import { Totals } from './Courses.tsx';
import { LowBar } from './Lows.tsx';
import { StackFigure } from './StackFigure.tsx';
import { explainExtant, explainRate, explainShrunk, percent, sayExtant } from './tell.ts';

/** How many there are of one printing, on its page. */
export function PrintingPopulation({ id }: { readonly id: string }) {
  const { version } = useBook().dossier;
  const { data: population } = usePopulation(version);
  const one = population?.printings.find((printing) => printing.id === id);
  if (!population || !one || population.on === null) return null;
  return (
    <section className="printing-population">
      <h3>
        <span>
          <Link to="/population">Population</Link>
        </span>
        <span>as of {sayDay(dayFrom(population.on))}</span>
      </h3>
      {one.services.length === 0 ? (
        <p className="detail">Listed by no service.</p>
      ) : (
        <>
          <Totals one={one} services={population.services} />
          <Stacks one={one} population={population} version={version} />
        </>
      )}
      <Rest one={one} />
    </section>
  );
}

interface StacksProps {
  readonly one: WirePrintingCount;
  readonly population: PopulationAnswer;
  readonly version: number;
}

function Stacks({ one, population: { services, falls }, version }: StacksProps) {
  const { data } = useHistories(version, one.id);
  return services.map((service) => {
    const count = one.services.find((each) => each.service === service.id);
    const history = data?.histories.find((each) => each.service === service.id);
    if (!count || !history) return null;
    return (
      <div key={service.id}>
        <StackFigure {...{ service, history, falls, labels: count.labels }} />
        <Rate count={count} service={service} />
      </div>
    );
  });
}

function Rate({ count, service }: { count: WireServiceCount; service: CountingService }) {
  return (
    <p className="detail">
      Top rate{' '}
      <Num why={explainRate(count, service)}>
        {count.rate === null ? 'none graded' : percent(count.rate)}
      </Num>
      , in the light of the others{' '}
      <Num why={explainShrunk(count, service)}>{percent(count.shrunk)}</Num>
    </p>
  );
}

function Rest({ one: { extant, low } }: { readonly one: WirePrintingCount }) {
  return (
    <>
      {extant ? (
        <p className="detail">
          Certified copies that can turn up:{' '}
          <Num why={explainExtant(extant)}>{sayExtant(extant)}</Num>, {extant.interval95[0]} to{' '}
          {extant.interval95[1]}. {extant.cautions.join(' ')}
        </p>
      ) : (
        <p className="detail">
          How many certified copies can turn up is not known: no certificate was seen twice.
        </p>
      )}
      {low ? (
        <>
          <p className="detail">A low population:</p>
          <LowBar low={low} />
        </>
      ) : null}
    </>
  );
}
