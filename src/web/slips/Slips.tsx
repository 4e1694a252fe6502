import { dayFrom, sayDay, sayEdtf } from '../../evidence/index.ts';
import { useBook } from '../app/context.ts';
import { Chance, PrintingLink, Screen, SourceLink } from '../marks/index.ts';
import { type Slip, slipsOf } from '../view/index.ts';
import { count, explainRight, propertyName } from '../words/index.ts';

/** Claims that the evidence makes improbable, with what they most probably took for what. */
export function Slips() {
  const book = useBook();
  const slips = slipsOf(book);
  return (
    <Screen
      title="Slips"
      lead={
        slips.length === 0
          ? 'No claim is improbable by the evidence so far.'
          : `${count(slips.length, 'claim')} that the evidence makes improbable, the surest slips first.`
      }
    >
      <div className="wide">
        <table className="list">
          <thead>
            <tr>
              <th scope="col">Source</th>
              <th scope="col">says</th>
              <th scope="col">of</th>
              <th scope="col">released</th>
              <th scope="col">most probably</th>
              <th scope="col">right</th>
            </tr>
          </thead>
          <tbody>
            {slips.map((slip) => (
              <Row key={slip.claim.row} slip={slip} />
            ))}
          </tbody>
        </table>
      </div>
    </Screen>
  );
}

function Row({ slip: { printing, best, claim } }: { readonly slip: Slip }) {
  const { source, property, value, p_right, explanation, p_reading } = claim;
  return (
    <tr className="slip">
      <th scope="row">
        <SourceLink id={source} />
      </th>
      <td data-head="says">
        {property === 'on-sale' ? '' : `${propertyName(property)} `}
        {sayEdtf(value)}
      </td>
      <td data-head="of">
        <PrintingLink id={printing} />
      </td>
      <td className="no-break" data-head="released">
        {best ? sayDay(dayFrom(best), true) : ''}
      </td>
      <td data-head="most probably">{explanation}</td>
      <td data-head="right">
        <Chance p={p_right} why={explainRight(p_right, explanation, p_reading)} against />
      </td>
    </tr>
  );
}
