import { useBook } from '../app/context.ts';
import { Num } from '../marks/index.ts';
import type { Book, DatedPrinting } from '../view/index.ts';
import { explainBest, explainWindow, sayDated, sayElse, sayP, sayWindow } from '../words/index.ts';

/** The day as a person says it, large, and what it is worth. */
export function Answer({ dated }: { readonly dated: DatedPrinting | undefined }) {
  const book = useBook();
  const said = sayDated(dated, false);
  return (
    <>
      <p className={said.main.length > 18 ? 'day long' : 'day'}>{said.main}</p>
      <p className="worth">{dated ? worth(dated, book) : ''}</p>
    </>
  );
}

function worth(dated: DatedPrinting, { dating }: Book) {
  if (dated.state === 'open') return 'No claim and no sequence bounds it; it is not guessed.';
  if (dated.state === 'bounded') {
    return 'No dated claim: only what sequence and dossier leave, which is no guess at a day.';
  }
  if (dated.state === 'window') {
    return (
      <>
        a window that holds <Num why={explainWindow(dated)}>{sayP(dated.p_interval)}</Num>; no day
        holds a half
      </>
    );
  }
  const rest = sayElse(dated);
  return (
    <>
      probability <Num why={dating ? explainBest(dated, dating) : ''}>{sayP(dated.p_best)}</Num>
      {rest ? `, ${rest}` : ''}
      {dated.interval95 && dated.interval95[0] !== dated.interval95[1] ? (
        <>
          ; <Num why={explainWindow(dated)}>95 %</Num> within {sayWindow(...dated.interval95)}
        </>
      ) : null}
    </>
  );
}
