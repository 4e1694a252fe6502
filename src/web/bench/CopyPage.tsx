import { useParams } from '@tanstack/react-router';
import { useEffect } from 'react';
import { useBook } from '../app/context.ts';
import { Register, Screen } from '../marks/index.ts';
import { shortName } from '../view/index.ts';
import { useBenchProgress } from '../wire/index.ts';
import { capital, count } from '../words/index.ts';
import { Easel } from './Easel.tsx';
import { FoundSheet } from './FoundSheet.tsx';
import { PaperFaces } from './Paper.tsx';
import { TakingPictures } from './TakingPictures.tsx';
import { sayIso, sayLeft } from './tell.ts';
import { type CopyWork, useCopyWork } from './useCopyWork.ts';

/** One copy on the bench: what its pictures measure, and what was found. */
export function CopyPage() {
  const { id } = useParams({ from: '/bench/$id' });
  return <OnBench key={id} id={id} />;
}

function OnBench({ id }: { readonly id: string }) {
  const { work, error, trouble } = useCopyWork(id);
  useEffect(() => {
    document.title = `${id} on the bench – Printlore`;
  }, [id]);
  if (!work) {
    return (
      <Screen title={id} lead={error ? undefined : 'Its pictures are being measured …'}>
        {error ? (
          <p className="trouble" role="alert">
            {error.message}
          </p>
        ) : (
          <Progress id={id} />
        )}
      </Screen>
    );
  }
  const { copy, side } = work;
  const bare = copy.pictures.length === 0;
  return (
    <main className={bare ? 'sheet' : 'sheet bench'}>
      <Register corner="first" />
      <section className="matter scroller" aria-label={`${id} on the bench`}>
        <h1>
          {id}
          {bare ? null : <span className="on-screen">, {side}</span>}
        </h1>
        <Lead work={work} />
        {trouble ? (
          <p className="trouble" role="alert">
            {trouble}
          </p>
        ) : null}
        {bare ? (
          <TakingPictures work={work} />
        ) : (
          <>
            <div className="on-screen">
              <Easel key={side} work={work} />
            </div>
            <PaperFaces work={work} />
          </>
        )}
      </section>
      {bare ? null : <FoundSheet work={work} />}
      <Register corner="last" />
    </main>
  );
}

/** How far the measuring has come. */
function Progress({ id }: { readonly id: string }) {
  const progress = useBenchProgress(id, true);
  if (!progress || progress.of === 0) return null;
  const { done, of, now } = progress;
  return (
    <p className="measuring">
      <progress max={of} value={done} aria-label="Faces measured" /> {done} of {count(of, 'face')}{' '}
      measured{now ? `; now ${now}` : ''}
    </p>
  );
}

function Lead({ work: { copy, busy } }: { readonly work: CopyWork }) {
  const book = useBook();
  const names = copy.printing
    .split('|')
    .filter(Boolean)
    .map((one) => shortName(book, one.trim()))
    .join(' or ');
  const first = copy.clock.open.find(({ left }) => left >= 0);
  const bought = copy.bought ? `bought ${sayIso(copy.bought)}, ` : '';
  return (
    <p className="lead">
      {names}. {capital(`${bought}${copy.status}`)}
      {first ? (
        <>
          ;{' '}
          <mark>
            the window against the {first.against}: {sayLeft(first.left)}
          </mark>
        </>
      ) : null}
      .{busy ? <span className="pending"> Being measured …</span> : null}
    </p>
  );
}
