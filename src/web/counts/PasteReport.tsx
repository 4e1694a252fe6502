import { useState } from 'react';
import type { CountingService, ReportRead, ReportRequest } from '../../contract/index.ts';
import { parseEdtf } from '../../evidence/index.ts';
import { useDesk } from '../app/context.ts';
import { readPasted } from '../wire/index.ts';
import { count } from '../words/index.ts';
import { ReportPreview } from './ReportPreview.tsx';
import { reportChanges } from './words.ts';

/** Most rows of one step. */
const MOST = 20_000;

/** A population report as it was pasted: read, shown, and added only when asked. */
export function PasteReport({ services }: { readonly services: readonly CountingService[] }) {
  const { change } = useDesk();
  const [service, setService] = useState('');
  const [asOf, setAsOf] = useState('');
  const [text, setText] = useState('');
  const [read, setRead] = useState<{ of: ReportRequest; report: ReportRead }>();
  const [trouble, setTrouble] = useState('');
  if (services.length === 0)
    return (
      <p className="empty">
        A report is read by the grades of its service: enter the services in services.csv first,
        with id, title, grades from the worst to the best, and the lowest grade that counts as a top
        one.
      </p>
    );
  const of = { service: service || (services[0]?.id ?? ''), as_of: asOf, text };
  const isDay = parseEdtf(asOf).ok;
  const ask = () => {
    setTrouble('');
    readPasted(of)
      .then((report) => setRead({ of, report }))
      .catch((error: Error) => setTrouble(error.message));
  };
  const add = () => {
    if (!read) return;
    const changes = reportChanges(read.of.service, read.of.as_of, read.report.counts);
    change({ label: `Add the report of ${read.of.service} as of ${read.of.as_of}`, changes });
    setRead(undefined);
    setText('');
  };
  return (
    <section className="paste-report">
      <h2>Add a report</h2>
      <p className="lead">
        Paste the table of a report, a CSV, or the source of a saved page. What is understood is
        shown first.
      </p>
      <Whose {...{ services, service: of.service, setService, asOf, setAsOf }} />
      <label className="field">
        <span>The report</span>
        <textarea rows={5} value={text} onChange={(event) => setText(event.target.value)} />
      </label>
      {trouble ? <p className="form-trouble">{trouble}</p> : null}
      <div className="acts">
        <button type="button" className="choice" disabled={!text.trim() || !isDay} onClick={ask}>
          Read it
        </button>
        {text.trim() && !isDay ? <span className="hint">Say on which day it was read.</span> : null}
      </div>
      {read ? <ReportPreview report={read.report} /> : null}
      {read ? <AddIt report={read.report} add={add} /> : null}
    </section>
  );
}

interface WhoseProps {
  readonly services: readonly CountingService[];
  readonly service: string;
  readonly setService: (id: string) => void;
  readonly asOf: string;
  readonly setAsOf: (day: string) => void;
}

function Whose({ services, service, setService, asOf, setAsOf }: WhoseProps) {
  return (
    <div className="paste-fields">
      <label className="field">
        <span>Service</span>
        <select value={service} onChange={(event) => setService(event.target.value)}>
          {services.map(({ id, title }) => (
            <option key={id} value={id}>
              {title}
            </option>
          ))}
        </select>
      </label>
      <label className="field">
        <span>Read on</span>
        <input
          value={asOf}
          placeholder="2026-07-31"
          onChange={(event) => setAsOf(event.target.value.trim())}
        />
      </label>
    </div>
  );
}

function AddIt({ report, add }: { readonly report: ReportRead; readonly add: () => void }) {
  const rows = report.counts.length;
  const trouble = report.there
    ? 'population.csv has a report of this service on that day: remove it first.'
    : rows > MOST
      ? `More than ${MOST} rows: add it with the command “population --add”.`
      : '';
  return (
    <div className="acts">
      <button
        type="button"
        className="choice"
        disabled={trouble !== '' || rows === 0}
        onClick={add}
      >
        Add {count(rows, 'row')}
      </button>
      {trouble ? <span className="hint wrong">{trouble}</span> : null}
    </div>
  );
}
