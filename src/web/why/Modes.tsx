import { Num } from '../marks/index.ts';
import type { DatedPrinting } from '../view/index.ts';
import { explainMode, sayP, sayWindow } from '../words/index.ts';

/** Where the evidence can be read in two ways, both ways. */
export function Modes({ dated }: { readonly dated: DatedPrinting }) {
  if (dated.modes.length < 2) return null;
  return (
    <section>
      <h3>{dated.modes.length === 2 ? 'Two' : 'Several'} ways to read it</h3>
      <ul className="rows">
        {dated.modes.map(({ from, to, p }) => (
          <li key={from}>
            <span>{sayWindow(from, to, false)}</span>
            <Num why={explainMode(from, to, p)}>{sayP(p)}</Num>
          </li>
        ))}
      </ul>
    </section>
  );
}
