import { useSearch } from '@tanstack/react-router';
import { lazy, Suspense, useEffect, useMemo, useRef } from 'react';
import { useBook } from '../app/context.ts';
import { useMedia } from '../app/media.ts';
import { filterOf, searchOf } from '../app/search.ts';
import { Register } from '../marks/index.ts';
import { lanesOf } from '../view/index.ts';
import { WhySheet } from '../why/index.ts';
import { Empty } from './Empty.tsx';
import { Head } from './Head.tsx';
import { Lanes } from './Lanes.tsx';
import { Legend } from './Legend.tsx';
import { Strip } from './Strip.tsx';
import { Summary } from './Summary.tsx';
import { useAxes } from './useAxes.ts';
import { useLook } from './useLook.ts';
import { bring } from './useRows.ts';
import { useGo, useSelection } from './useSelection.ts';
import { useWheel } from './useWheel.ts';

// Its menus are the heaviest thing of this screen, and the first view does not need them.
const Filters = lazy(() => import('./Filters.tsx'));

/** The front page: a lane a printing, and beside it why. */
export function Chronology() {
  const book = useBook();
  const search = useSearch({ from: '/' });
  const go = useGo();
  const scroller = useRef<HTMLElement>(null);
  const filter = useMemo(() => filterOf(search), [search]);
  const ids = useMemo(() => lanesOf(book, filter), [book, filter]);
  const axes = useAxes(book.dated.values());
  const look = useLook(scroller, axes, ids.length);
  useWheel(scroller, axes);
  useEffect(() => {
    document.title = `${book.dossier.title} – Printlore`;
  }, [book.dossier.title]);
  const wide = useMedia('(min-width: 62.5em)');
  const { active, setActive, selected, open, close, keys } = useSelection({
    ids,
    wide,
    axes,
    bring: (at) => scroller.current && bring(scroller.current, look.height, at),
  });
  return (
    <main className={selected && book.printings.has(selected) ? 'sheet two open' : 'sheet two'}>
      <Register corner="first" />
      <section className="matter scroller" ref={scroller} aria-label="Chronology">
        <h1>{book.dossier.title}</h1>
        <Summary />
        <Empty />
        <Suspense fallback={<div className="filters" />}>
          <Filters filter={filter} set={(next) => go(searchOf(next, search.printing))} />
        </Suspense>
        <div className="axes">
          {look.stacked ? <Strip ids={ids} scroller={scroller} look={look} /> : null}
          <Head scale={look.scale} close={look.close} stacked={look.stacked} axes={axes} />
        </div>
        <Lanes
          ids={ids}
          look={look}
          scroller={scroller}
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
