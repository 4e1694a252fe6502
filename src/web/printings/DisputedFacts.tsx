import type { WireFact } from '../../contract/index.ts';
import { sayList } from '../../evidence/index.ts';
import { useBook } from '../app/context.ts';
import { Chance, Marked } from '../marks/index.ts';
import { sourceName } from '../view/index.ts';
import { propertyName, sayP } from '../words/index.ts';

/** Facts that are no dates and on which the sources differ. */
export function DisputedFacts({ id }: { readonly id: string }) {
  const { dossier } = useBook();
  const facts = dossier.facts.filter(({ printing, disputed }) => printing === id && disputed);
  if (facts.length === 0) return null;
  return (
    <section>
      <h3>
        Disputed <span>probability</span>
      </h3>
      {facts.map((fact) => (
        <Fact key={fact.property} fact={fact} />
      ))}
    </section>
  );
}

function Fact({ fact: { property, values, why } }: { readonly fact: WireFact }) {
  const book = useBook();
  const byRow = new Map(book.dossier.claims.map((claim) => [claim.row, claim]));
  return (
    <>
      <ul className="rows">
        {values.map(({ value, p, claims, own }) => {
          const sources = claims.map((row) => sourceName(book, byRow.get(row)?.source ?? ''));
          const said = [...new Set(sources), ...(own ? ['the dossier’s own row'] : [])];
          const explained = `Probability ${sayP(p)} that the ${propertyName(property)} is ${value}, by the reliability of who says it.`;
          return (
            <li key={value}>
              <span>
                {propertyName(property)} {value}
                <span className="detail"> {sayList(said)}</span>
              </span>
              <Chance p={p} why={explained} against={p < 0.5} />
            </li>
          );
        })}
      </ul>
      {why ? <Marked why={why} /> : null}
    </>
  );
}
