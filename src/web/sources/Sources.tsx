import { useBook } from '../app/context.ts';
import { Interval, Num, Screen, SourceLink } from '../marks/index.ts';
import { sourceName } from '../view/index.ts';
import { explainAccuracy, explainDerives, sayP } from '../words/index.ts';
import { Weekdays } from './Weekdays.tsx';

/** Who states things, how often each is right, and who took from whom. */
export function Sources() {
  const { dossier } = useBook();
  return (
    <Screen
      title="Sources"
      lead="Who states things: how often each is right about the day on sale, and from whom it took what it says."
    >
      {dossier.sources.length === 0 ? (
        <p className="empty">The dossier names no source yet.</p>
      ) : null}
      <div className="wide">
        <table className="list">
          <thead>
            <tr>
              <th scope="col">Source</th>
              <th scope="col">Kind</th>
              <th scope="col" className="figure">
                Claims
              </th>
              <th scope="col">Right, 0 to 1</th>
              <th scope="col">Mostly wrong by</th>
              <th scope="col">Derived from</th>
            </tr>
          </thead>
          <tbody>
            {dossier.sources.map(({ id }) => (
              <Row key={id} id={id} />
            ))}
          </tbody>
        </table>
      </div>
      <Weekdays />
    </Screen>
  );
}

function Row({ id }: { readonly id: string }) {
  const book = useBook();
  const source = book.datedSources.get(id);
  const said = book.dossier.claims.filter((claim) => claim.source === id).length;
  const from = source?.derives.filter(({ p }) => p >= 0.05) ?? [];
  return (
    <tr>
      <th scope="row">
        <SourceLink id={id} />
      </th>
      <td data-head="kind">{book.sources.get(id)?.kind.replaceAll('-', ' ')}</td>
      <td className="figure" data-head="claims">
        {said}
      </td>
      <td data-head="right">
        {source && source.accuracy !== null && source.accuracy95 ? (
          <Interval
            p={source.accuracy}
            interval={source.accuracy95}
            why={explainAccuracy(source)}
          />
        ) : (
          <span className="detail">names no day on sale</span>
        )}
      </td>
      <td data-head="mostly wrong by">{source?.habits[0]?.words}</td>
      <td data-head="derived from">
        {from.map((one) => (
          <span key={one.from} className="one-line">
            {one.p < 0.5 ? 'perhaps ' : ''}
            {sourceName(book, one.from)}{' '}
            <Num why={explainDerives(sourceName(book, one.from), one.p)}>{sayP(one.p)}</Num>
          </span>
        ))}
      </td>
    </tr>
  );
}
