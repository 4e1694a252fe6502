import { useNavigate, useSearch } from '@tanstack/react-router';
import { useEffect, useMemo, useRef, useState } from 'react';
import { useBook } from '../app/context.ts';
import { useMedia } from '../app/media.ts';
import { type ChronologySearch, filterOf } from '../app/search.ts';
import { Register } from '../marks/index.ts';
import { type Filter, lanesOf } from '../view/index.ts';
import { WhySheet } from '../why/index.ts';
import { Empty } from './Empty.tsx';
import { Filters } from './Filters.tsx';
import { Head } from './Head.tsx';
import { Lanes } from './Lanes.tsx';
import { Legend } from './Legend.tsx';
import { laneKeys } from './laneKeys.ts';
import { Strip } from './Strip.tsx';
import { Summary } from './Summary.tsx';
import { useAxes } from './useAxes.ts';
import { useLook } from './useLook.ts';
import { useRows } from './useRows.ts';
import { useWheel } from './useWheel.ts';

/** The front page: a lane a printing, and beside it why. */
export function Chronology() {
  const book = useBook();
  const search = useSearch({ from: '/' });
  const go = useGo();
  const wide = useMedia('(min-width: 62.5em)');
  const scroller = useRef<HTMLElement>(null);
  const filter = useMemo(() => filterOf(search), [search]);
  const ids = useMemo(() => lanesOf(book, filter), [book, filter]);
  const axes = useAxes(book.dated.values());
  const look = useLook(scroller, axes, ids.length);
  const [rows, bring] = useRows(scroller, look.height, ids.length);
  const [active, setActive] = useState(() => Math.max(0, ids.indexOf(search.printing ?? '')));
  useWheel(scroller, axes);
  useEffect(() => {
    document.title = `${book.dossier.title} – Printlore`;
  }, [book.dossier.title]);
  const selected = search.printing ?? (wide ? ids[0] : undefined);
  const open = (id: string) => {
    go({ ...search, printing: id });
  };
  const close = () => {
    const { printing: _, ...rest } = search;
    go(rest);
    document.getElementById('lanes')?.focus();
  };
  const keys = laneKeys({
    count: ids.length,
    active,
    go: (at) => {
      setActive(at);
      bring(at);
      if (wide && ids[at] !== undefined) open(ids[at]);
    },
    open: () => {
      if (ids[active] === undefined) return;
      open(ids[active]);
      requestAnimationFrame(() => document.getElementById('why-heading')?.focus());
    },
    close,
    axes,
  });
  return (
    <main className={selected && book.printings.has(selected) ? 'sheet two open' : 'sheet two'}>
      <Register corner="first" />
      <section className="matter scroller" ref={scroller} aria-label="Chronology">
        <h1>{book.dossier.title}</h1>
        <Summary />
        <Empty />
        <Filters filter={filter} set={(next) => go(searchOf(next, search.printing))} />
        <div className="axes">
          {look.stacked ? (
            <Strip ids={ids} dated={book.dated} rows={rows} scale={look.scale} />
          ) : null}
          <Head scale={look.scale} close={look.close} stacked={look.stacked} axes={axes} />
        </div>
        <Lanes
          ids={ids}
          look={look}
          rows={rows}
          active={active}
          selected={selected}
          focusIn={setActive}
          open={open}
          keys={keys}
        />
        {ids.length === 0 && book.dossier.printings.length > 0 ? (
          <p className="lead">No printing passes these filters.</p>
        ) : null}
        <Legend />
      </section>
      {selected && book.printings.has(selected) ? (
        <WhySheet id={selected} close={close} closable={!wide} />
      ) : null}
      <Register corner="last" />
    </main>
  );
}

function useGo() {
  const navigate = useNavigate({ from: '/' });
  return (search: ChronologySearch) => void navigate({ to: '/', search, replace: true });
}

function searchOf(filter: Filter, printing: string | undefined): ChronologySearch {
  const { order, ...lists } = filter;
  return {
    ...(printing === undefined ? {} : { printing }),
    ...(order === 'dossier' ? { order } : {}),
    ...Object.fromEntries(Object.entries(lists).filter(([, list]) => list.length > 0)),
  };
}
