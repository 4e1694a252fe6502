import { Link } from '@tanstack/react-router';
import { useState } from 'react';
import type { CountingService, WireLabelled } from '../../contract/index.ts';
import { dayFrom, sayDay } from '../../evidence/index.ts';
import { useBook } from '../app/context.ts';
import { Screen } from '../marks/index.ts';
import { useLabels, usePopulation } from '../wire/index.ts';
import { count } from '../words/index.ts';
import { LabelItem } from './LabelItem.tsx';
import { Letters } from './Letters.tsx';
import { PasteReport } from './PasteReport.tsx';

/** Labels shown at once. */
const AT_ONCE = 40;

/** The labels of the services with the printings they may be, for the collector's word. */
export function Labels() {
  const { version } = useBook().dossier;
  const { data: population } = usePopulation(version);
  const { data, error, isPlaceholderData: old } = useLabels(version);
  const services = population?.services ?? [];
  const day = data?.on ? ` As of ${sayDay(dayFrom(data.on))}.` : '';
  return (
    <Screen
      title="Labels"
      lead={`What the services call the printings, and which each of their labels holds.${day}`}
    >
      <p className="detail to-labels">
        <Link to="/population">Population</Link>
      </p>
      {error ? <p className="slip-note">{error.message}</p> : null}
      {!data && !error ? <p className="pending">The labels are being matched …</p> : null}
      {old ? <p className="pending">Being matched anew …</p> : null}
      {data ? <List labels={data.labels} services={services} /> : null}
      <PasteReport services={services} />
      <Letters services={services} />
    </Screen>
  );
}

interface ListProps {
  readonly labels: readonly WireLabelled[];
  readonly services: readonly CountingService[];
}

function List({ labels, services }: ListProps) {
  const [all, setAll] = useState(false);
  const [shown, setShown] = useState(AT_ONCE);
  const open = labels.filter((label) => label.in_doubt);
  const listed = all ? labels : open;
  return (
    <section>
      <div className="acts">
        <button type="button" className="choice" aria-pressed={!all} onClick={() => setAll(false)}>
          In doubt, {open.length}
        </button>
        <button type="button" className="choice" aria-pressed={all} onClick={() => setAll(true)}>
          All, {labels.length}
        </button>
      </div>
      <p className="detail label-keys">
        Keys in a label: <kbd>↑</kbd> <kbd>↓</kbd> from printing to printing, <kbd>Enter</kbd> it is
        this one, <kbd>Delete</kbd> not this one, <kbd>Space</kbd> tick, <kbd>s</kbd> it holds the
        ticked ones, <kbd>n</kbd> none of them, <kbd>Ctrl Z</kbd> undo.
      </p>
      {listed.length === 0 ? <p className="empty">No label is in doubt.</p> : null}
      <ul className="labels">
        {listed.slice(0, shown).map((label) => (
          <LabelItem
            key={`${label.service}\n${label.label}`}
            label={label}
            title={services.find(({ id }) => id === label.service)?.title ?? label.service}
          />
        ))}
      </ul>
      {listed.length > shown ? (
        <button type="button" className="choice" onClick={() => setShown(shown + AT_ONCE)}>
          Show {count(Math.min(AT_ONCE, listed.length - shown), 'more label')}
        </button>
      ) : null}
    </section>
  );
}
