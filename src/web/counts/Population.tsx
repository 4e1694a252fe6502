import { Link } from '@tanstack/react-router';
import type { PopulationAnswer } from '../../contract/index.ts';
import { dayFrom, sayDay } from '../../evidence/index.ts';
import { useBook } from '../app/context.ts';
import { Screen } from '../marks/index.ts';
import { usePopulation } from '../wire/index.ts';
import { count } from '../words/index.ts';
import { Courses } from './Courses.tsx';
import { Extants } from './Extants.tsx';
import { Falls } from './Falls.tsx';
import { Lows } from './Lows.tsx';
import { Rates } from './Rates.tsx';

const NO_COUNT =
  'A population is what people sent in so far, the best first and some of it twice: no count of copies, and no chance for yours.';

/** How many there are of each printing: graded copies over time, top rates, copies that can turn up. */
export function PopulationScreen() {
  const { version } = useBook().dossier;
  const { data, error, isPlaceholderData: old } = usePopulation(version);
  if (!data) {
    return (
      <Screen title="Population">
        {error ? (
          <p className="slip-note">{error.message}</p>
        ) : (
          <p className="pending">The reports are being counted …</p>
        )}
      </Screen>
    );
  }
  const counted = data.services.some(({ reports }) => reports.length > 0);
  return (
    <Screen
      title="Population"
      lead={
        data.on === null
          ? 'No report of a grading service yet: paste one under “Labels, reports and letters”.'
          : `As of ${sayDay(dayFrom(data.on))}. ${NO_COUNT}`
      }
    >
      {old ? <p className="pending">Being counted anew …</p> : null}
      <ToLabels population={data} />
      {counted ? <All population={data} /> : null}
    </Screen>
  );
}

function ToLabels({ population: { in_doubt: open } }: { readonly population: PopulationAnswer }) {
  return (
    <p className="detail to-labels">
      <Link to="/population/labels">Labels, reports and letters</Link>
      {open > 0 ? `: ${count(open, 'label is', 'labels are')} in doubt` : ''}
    </p>
  );
}

function All({ population }: { readonly population: PopulationAnswer }) {
  return (
    <>
      <Courses population={population} />
      <Rates population={population} />
      <Extants population={population} />
      <Lows population={population} />
      <Falls falls={population.falls} services={population.services} />
      {population.services
        .filter(({ assumed }) => assumed)
        .map(({ id, title }) => (
          <p key={id} className="slip-note">
            services.csv states no grades for {title}: they were read off its report, and its
            highest number was taken for the top grade.
          </p>
        ))}
    </>
  );
}
