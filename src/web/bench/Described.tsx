import type { BenchCopy } from '../../contract/index.ts';
import { sayDoubt, sayList } from '../../evidence/index.ts';
import { Num } from '../marks/index.ts';
import { count, sayP } from '../words/index.ts';
import { kindName } from './tell.ts';

type Compared = NonNullable<BenchCopy['described']>['compared'][number];

/** The seller's condition words, each beside what was measured: first what disagrees. */
export function Described({ described, listing }: Pick<BenchCopy, 'described' | 'listing'>) {
  if (!described || described.silent) return listing ? <Listing listing={listing} /> : null;
  const that = (says: Compared['says']) => described.compared.filter((one) => one.says === says);
  const [against, agreed] = [that('disagrees'), that('agrees')];
  const hidden = new Set(described.unseen.map(thing));
  const open = that('open').filter((one) => !hidden.has(thing(one)));
  return (
    <section>
      <h3>
        The seller’s words <span>probability that more is there</span>
      </h3>
      <Rows compared={against} />
      <Quoted listing={listing} />
      {agreed.length > 0 ? (
        <details className="folded">
          <summary>{count(agreed.length, 'measurement agrees', 'measurements agree')}</summary>
          <Rows compared={agreed} />
        </details>
      ) : null}
      {open.length > 0 ? (
        <p className="detail said-of">
          Open, since the doubt is too wide: {sayList(open.map(thing))}.
        </p>
      ) : null}
      {hidden.size > 0 ? (
        <p className="detail said-of">
          Promised, but these pictures could not show it: {sayList([...hidden])}.
        </p>
      ) : null}
    </section>
  );
}

/** Words that promise nothing of the condition, as they stand. */
function Listing({ listing }: Pick<BenchCopy, 'listing'>) {
  return (
    <section>
      <h3>The seller’s words</h3>
      <Quoted listing={listing} />
    </section>
  );
}

function Quoted({ listing }: Pick<BenchCopy, 'listing'>) {
  return <blockquote className="on-screen listing">{listing}</blockquote>;
}

function thing({ side, measure }: Pick<Compared, 'side' | 'measure'>): string {
  return `${kindName(measure)} of the ${side}`;
}

function Rows({ compared }: { readonly compared: readonly Compared[] }) {
  return (
    <ul className="rows">
      {compared.map((one) => (
        <li key={`${one.from}|${one.side}|${one.measure}`}>
          <span>
            {one.says === 'disagrees' ? <mark>“{one.words}”</mark> : `“${one.words}”`}{' '}
            <span className="detail">
              {thing(one)}: at most {one.atMost}, found {one.found.mean.toFixed(2)} ±{' '}
              {sayDoubt(one.found.sd, 2)} {unitOf(one.unit)}; {one.says}
              {one.named.length > 0 ? `; the listing itself names ${sayList(one.named)}` : ''}
            </span>
          </span>
          <Num why={whyMore(one.unit)}>{sayP(one.pMore)}</Num>
        </li>
      ))}
    </ul>
  );
}

function unitOf(unit: string): string {
  return unit.startsWith('%') ? '%' : unit;
}

function whyMore(unit: string): string {
  return `Probability that more is there than the words allow, in ${unit}. What words allow stands in desk/words.csv, or is the usual list.`;
}
