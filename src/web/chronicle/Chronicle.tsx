import { useState } from 'react';
import { dayFrom, sayDay } from '../../evidence/index.ts';
import { useBook } from '../app/context.ts';
import { Screen } from '../marks/index.ts';
import { useChronicle, useWriting } from '../wire/index.ts';
import { count } from '../words/index.ts';
import { Leaves } from './Leaves.tsx';
import { Missing } from './Missing.tsx';
import { Preview } from './Preview.tsx';
import { Revisions } from './Revisions.tsx';
import { Writing } from './Writing.tsx';

/** The account before it leaves: what it lacks, what could harm, how it looks; then its writing. */
export function ChronicleScreen() {
  const { version } = useBook().dossier;
  const [prices, setPrices] = useState(false);
  const { data, error } = useChronicle(version);
  const work = useWriting().data?.work ?? null;
  const lacks = data?.missing.reduce((sum, { entries }) => sum + entries.length, 0);
  const lead =
    lacks === undefined
      ? ''
      : `${count(lacks, 'thing')} that a reader would miss, as of ${data ? sayDay(dayFrom(data.today)) : ''}. Nothing leaves this machine: a folder is written where you say, and what you do with it is yours.`;
  return (
    <Screen title="Chronicle" lead={lead}>
      {error ? (
        <p className="trouble" role="alert">
          {error.message}
        </p>
      ) : null}
      <div className="chronicle-columns">
        <div>
          {data ? <Missing missing={data.missing} /> : null}
          <Leaves prices={prices} setPrices={setPrices} />
          {data ? <Writing places={data.places} prices={prices} work={work} /> : null}
          <Revisions done={work?.state === 'running' ? '' : (work?.said ?? '')} />
        </div>
        <Preview prices={prices} />
      </div>
    </Screen>
  );
}
