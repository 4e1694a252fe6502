import { useParams } from '@tanstack/react-router';
import { lazy, Suspense } from 'react';
import { useBook } from '../app/context.ts';
import { HeldWords, Marked, Screen } from '../marks/index.ts';
import { Answer, ClaimList, Modes, Settle, SlipNotes } from '../why/index.ts';
import { DisputedFacts } from './DisputedFacts.tsx';
import { Distribution } from './Distribution.tsx';
import { PrintingFacts } from './PrintingFacts.tsx';
import { Sequences } from './Sequences.tsx';
import { Together } from './Together.tsx';

const Population = lazy(() =>
  import('../counts/PrintingPopulation.tsx').then((part) => ({ default: part.PrintingPopulation })),
);
const Price = lazy(() =>
  import('../prices/PrintingPrice.tsx').then((part) => ({ default: part.PrintingPrice })),
);

/** All that is known of one printing. */
export function PrintingPage() {
  const { id } = useParams({ from: '/printings/$id' });
  const book = useBook();
  const name = book.names.get(id);
  const dated = book.dated.get(id);
  if (!name) {
    return (
      <Screen title="No such printing">
        <p className="lead">The dossier has no printing with the id {id}.</p>
      </Screen>
    );
  }
  return (
    <Screen title={name.title} lead={name.detail}>
      <div className="columns">
        <div>
          <HeldWords held={book.held.get(id)} />
          <Answer dated={dated} />
          {dated?.why ? <Marked why={dated.why} /> : null}
          {dated && dated.days.length > 0 ? <Distribution dated={dated} /> : null}
          {dated ? <Modes dated={dated} /> : null}
          {dated ? <SlipNotes dated={dated} /> : null}
          <Sequences id={id} />
          {dated ? <Together ids={dated.together} /> : null}
          <Settle printing={id} />
          <Suspense>
            <Population id={id} />
            <Price id={id} />
          </Suspense>
        </div>
        <div>
          <ClaimList printing={id} />
          <DisputedFacts id={id} />
          <PrintingFacts id={id} />
        </div>
      </div>
    </Screen>
  );
}
