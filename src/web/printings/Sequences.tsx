import { useBook } from '../app/context.ts';
import { Num, PrintingLink } from '../marks/index.ts';
import { shortName } from '../view/index.ts';
import { explainFirst, explainSequence, sayP } from '../words/index.ts';

/** What came before and after it, with the probability of that sequence. */
export function Sequences({ id }: { readonly id: string }) {
  const book = useBook();
  const one = new Set([id, ...(book.dated.get(id)?.together ?? [])]);
  const near = (book.dating?.sequences ?? []).filter(
    ({ earlier, later }) => one.has(earlier) !== one.has(later),
  );
  const first = book.dating?.first.find((other) => other.id === id);
  const reasons = new Map(
    book.dossier.orders.map(({ earlier, later, cells }) => [`${earlier}|${later}`, cells.reason]),
  );
  if (near.length === 0 && !first) return null;
  return (
    <section>
      <h3>Sequence</h3>
      <ul className="rows">
        {first && first.p >= 0.005 ? (
          <li>
            <span>It was the first of all</span>
            <Num why={explainFirst(first.p)}>{sayP(first.p)}</Num>
          </li>
        ) : null}
        {near.map((sequence) => {
          const { earlier, later, stated, p } = sequence;
          const why = explainSequence(sequence, shortName(book, earlier), shortName(book, later));
          return (
            <li key={`${earlier}|${later}`}>
              <span>
                {one.has(later) ? 'after ' : 'before '}
                <PrintingLink id={one.has(later) ? earlier : later} />
                {stated ? (
                  <> (stated: {reasons.get(`${earlier}|${later}`) || 'no reason given'})</>
                ) : null}
              </span>
              <Num why={why}>{stated ? 'certain' : sayP(p)}</Num>
            </li>
          );
        })}
      </ul>
    </section>
  );
}
