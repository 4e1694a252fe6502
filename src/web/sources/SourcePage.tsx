import { useParams } from '@tanstack/react-router';
import { useBook } from '../app/context.ts';
import { Interval, Num, Screen, SourceLink } from '../marks/index.ts';
import { type DatedSource, sourceName } from '../view/index.ts';
import { count, explainAccuracy, explainDerives, explainShare, sayP } from '../words/index.ts';
import { SourceClaims } from './SourceClaims.tsx';

/** One source: how far it can be relied on, its habits, whom it took from, and all it says. */
export function SourcePage() {
  const { id } = useParams({ from: '/sources/$id' });
  const book = useBook();
  const row = book.sources.get(id);
  const source = book.datedSources.get(id);
  if (!row) {
    return (
      <Screen title="No such source">
        <p className="lead">The dossier has no source with the id {id}.</p>
      </Screen>
    );
  }
  const said = book.dossier.claims.filter((claim) => claim.source === id).length;
  return (
    <Screen
      title={sourceName(book, id)}
      lead={`${row.kind.replaceAll('-', ' ')}, ${count(said, 'claim')}. ${row.cells.citation ?? ''}`}
    >
      <div className="columns">
        <div>
          {source ? <Reliance source={source} /> : null}
          {source ? <Derived source={source} cites={row.cites} /> : null}
          {source ? <Takers id={id} /> : null}
        </div>
        <SourceClaims id={id} />
      </div>
    </Screen>
  );
}

function Reliance({ source }: { readonly source: DatedSource }) {
  return (
    <section>
      <h3>
        Right about the day on sale <span>share</span>
      </h3>
      <ul className="rows">
        <li>
          <span>
            {source.accuracy === null ? 'It names no day on sale.' : 'Names the true day'}
          </span>
          {source.accuracy !== null && source.accuracy95 ? (
            <Interval
              p={source.accuracy}
              interval={source.accuracy95}
              why={explainAccuracy(source)}
            />
          ) : null}
        </li>
        {source.habits.map(({ reading, words, share, share95 }) => (
          <li key={reading + words}>
            <span>{words}</span>
            <Interval p={share} interval={share95} why={explainShare(share, share95)} />
          </li>
        ))}
      </ul>
    </section>
  );
}

interface DerivedProps {
  readonly source: DatedSource;
  readonly cites: readonly string[];
}

function Derived({ source, cites }: DerivedProps) {
  const book = useBook();
  const known = source.derives.filter(({ p }) => p >= 0.05);
  return (
    <section>
      <h3>
        {known.some(({ p }) => p >= 0.5) ? 'Derived from' : 'Perhaps derived from'}{' '}
        <span>probability</span>
      </h3>
      {known.length === 0 ? (
        <p className="detail">Nothing speaks for its having taken from another source here.</p>
      ) : null}
      <ul className="rows">
        {known.map(({ from, p }) => (
          <li key={from}>
            <span>
              <SourceLink id={from} />
              {cites.includes(from) ? ', as it says itself' : ''}
            </span>
            <Num why={explainDerives(sourceName(book, from), p)}>{sayP(p)}</Num>
          </li>
        ))}
      </ul>
    </section>
  );
}

function Takers({ id }: { readonly id: string }) {
  const book = useBook();
  const takers = [...book.datedSources.values()].flatMap((other) =>
    other.derives.filter(({ from, p }) => from === id && p >= 0.05).map(({ p }) => ({ other, p })),
  );
  if (takers.length === 0) return null;
  return (
    <section>
      <h3>
        Taken over by <span>probability</span>
      </h3>
      <ul className="rows">
        {takers.map(({ other, p }) => (
          <li key={other.id}>
            <SourceLink id={other.id} />
            <Num why={explainDerives(sourceName(book, id), p)}>{sayP(p)}</Num>
          </li>
        ))}
      </ul>
    </section>
  );
}
