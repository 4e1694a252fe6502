import { type ReactNode, useState } from 'react';
import { sayEdtf, sayList } from '../../evidence/index.ts';
import { useBook, useDesk } from '../app/context.ts';
import { ClaimEditor } from '../claims/ClaimEditor.tsx';
import { withdraw } from '../claims/changes.ts';
import { Chance, Num, SourceLink } from '../marks/index.ts';
import { type JoinedClaim, productName, shortName, sourceName } from '../view/index.ts';
import { explainRight, isDateProperty, propertyName, sayP } from '../words/index.ts';

/** One claim: whose, what, how probably right and how it came about; more of it on demand. */
export function ClaimItem({ claim, dated, about }: JoinedClaim & { readonly about?: ReactNode }) {
  const book = useBook();
  const { change } = useDesk();
  const [editing, setEditing] = useState(false);
  if (editing) {
    return (
      <li>
        <ClaimEditor claim={claim} done={() => setEditing(false)} />
      </li>
    );
  }
  return (
    <li className={dated?.slip ? 'claim slip' : 'claim'}>
      <div className="claim-line">
        <span className="claim-source">
          {dated?.slip ? <CrossMark /> : null}
          {about ?? <SourceLink id={claim.source} />}
        </span>
        <Right claim={claim} dated={dated} />
      </div>
      <details>
        <summary className="detail">
          {saidValue(claim)}
          {dated ? `: ${dated.explanation}` : ''}
        </summary>
        <More claim={claim} dated={dated} />
        <div className="acts">
          <button type="button" className="choice" onClick={() => setEditing(true)}>
            Change
          </button>
          <button
            type="button"
            className="choice"
            onClick={() => change(withdraw(claim, sourceName(book, claim.source)))}
          >
            Withdraw
          </button>
        </div>
      </details>
    </li>
  );
}

function saidValue({ property, value }: JoinedClaim['claim']): string {
  const said = isDateProperty(property) ? sayEdtf(value) : value;
  return property === 'on-sale' ? said : `${propertyName(property)} ${said}`;
}

function Right({ claim, dated }: JoinedClaim) {
  const { weighed } = useBook();
  if (dated) {
    const why = explainRight(dated.p_right, dated.explanation, dated.p_reading);
    return <Chance p={dated.p_right} why={why} against={dated.slip} />;
  }
  const fact = weighed.get(claim.row);
  if (fact && fact.source === claim.source && fact.value === claim.value) {
    const why = `Probability that this fact holds: ${sayP(fact.p_right)}, by the reliability of all who speak of it.`;
    return <Chance p={fact.p_right} why={why} against={fact.slip} />;
  }
  return <span className="detail">{isDateProperty(claim.property) ? 'being weighed' : ''}</span>;
}

function CrossMark() {
  return (
    <svg className="axis cross" width="10" height="10" role="img" aria-label="Slip:">
      <path className="slips" d="M2 2l6 6m0 -6l-6 6" />
    </svg>
  );
}

function More({ claim, dated }: JoinedClaim) {
  const book = useBook();
  const { locator, quote, note, stated_on, read_on } = claim.cells;
  const facts = [
    ['as written', claim.value],
    ['where', locator],
    ['in its words', quote],
    ['note', note],
    ['stated on', stated_on ? sayEdtf(stated_on) : ''],
    ['read on', read_on ? sayEdtf(read_on) : ''],
    [
      'of one of',
      claim.printings.length > 1
        ? sayList(
            claim.printings.map((id) => shortName(book, id)),
            'or',
          )
        : '',
    ],
    ['of the product', claim.product ? productName(book, claim.product) : ''],
  ].filter((fact): fact is [string, string] => Boolean(fact[1]));
  return (
    <>
      <dl className="facts">
        {facts.map(([name, words]) => (
          <div key={name}>
            <dt>{name}</dt>
            <dd>{words}</dd>
          </div>
        ))}
      </dl>
      {dated && dated.others.length > 0 ? (
        <ul className="rows others">
          <li>
            <span>{dated.explanation}</span>
            <Num why="Probability of this reading of the claim, given all the evidence.">
              {sayP(dated.p_reading)}
            </Num>
          </li>
          {dated.others.map((other) => (
            <li key={other.reading + other.explanation}>
              <span>or: {other.explanation}</span>
              <Num why="Probability of this other reading, given all the evidence.">
                {sayP(other.p)}
              </Num>
            </li>
          ))}
        </ul>
      ) : null}
    </>
  );
}
