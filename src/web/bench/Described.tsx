import type { BenchCopy } from '../../contract/index.ts';
import { sayList } from '../../evidence/index.ts';
import { Num } from '../marks/index.ts';
import { capital, sayP } from '../words/index.ts';
import { kindName } from './tell.ts';

/** The seller's condition words, each beside what was measured. */
export function Described({ described }: Pick<BenchCopy, 'described'>) {
  if (!described || described.silent) return null;
  const told = described.compared.filter(({ says }) => says !== 'open');
  const open = described.compared.filter(({ says }) => says === 'open');
  const unseen = described.unseen.map(({ side, measure }) => `${kindName(measure)} of the ${side}`);
  return (
    <section>
      <h3>
        The seller’s words <span>probability that more is there</span>
      </h3>
      <ul className="rows">
        {told.map((one) => (
          <li key={`${one.from}|${one.side}|${one.measure}`}>
            <span>
              {one.says === 'disagrees' ? <mark>“{one.words}”</mark> : `“${one.words}”`}{' '}
              <span className="detail">
                {kindName(one.measure)} of the {one.side}: at most {one.atMost}, found{' '}
                {one.found.mean.toFixed(2)} ± {one.found.sd.toFixed(2)} {unitOf(one.unit)};{' '}
                {one.says}
                {one.named.length > 0 ? `; the listing itself names ${sayList(one.named)}` : ''}
              </span>
            </span>
            <Num why={whyMore(one.unit)}>{sayP(one.pMore)}</Num>
          </li>
        ))}
      </ul>
      {open.length > 0 ? (
        <p className="detail said-of">
          Open, since nothing was found and these pictures need not show it, or the doubt is too
          wide: {sayList(open.map(({ side, measure }) => `${kindName(measure)} of the ${side}`))}.
        </p>
      ) : null}
      {unseen.length > 0 ? (
        <p className="detail said-of">
          {capital(sayList(unseen))}: promised, but these pictures could not show it.
        </p>
      ) : null}
    </section>
  );
}

function unitOf(unit: string): string {
  return unit.startsWith('%') ? '%' : unit;
}

function whyMore(unit: string): string {
  return `Probability that more is there than the words allow, in ${unit}. What words allow stands in desk/words.csv, or is the usual list.`;
}
