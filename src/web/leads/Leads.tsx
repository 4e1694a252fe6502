import { useBook } from '../app/context.ts';
import { Num, PrintingLink, Screen } from '../marks/index.ts';
import { EXPLAIN_GAIN, sayBits, sayDated } from '../words/index.ts';

/** Evidence not yet seen, by how much it would settle. */
export function Leads() {
  const book = useBook();
  const leads = [...(book.dating?.leads ?? [])].sort((a, b) => b.gain_bits - a.gain_bits);
  return (
    <Screen
      title="Leads"
      lead={
        leads.length === 0
          ? 'No lead: either all is settled, or there is nothing yet to go by.'
          : 'Evidence not yet seen, first what would settle most.'
      }
    >
      <div className="wide">
        <table className="list">
          <thead>
            <tr>
              <th scope="col">Look for</th>
              <th scope="col">kind of source</th>
              <th scope="col">for</th>
              <th scope="col">known so far</th>
              <th scope="col" className="figure">
                would tell
              </th>
            </tr>
          </thead>
          <tbody>
            {leads.map((lead) => (
              <tr key={`${lead.printing}|${lead.kind}|${lead.words}`}>
                <th scope="row">{lead.words}</th>
                <td data-head="kind">{lead.kind.replaceAll('-', ' ')}</td>
                <td data-head="for">
                  <PrintingLink id={lead.printing} />
                </td>
                <td className="no-break" data-head="known so far">
                  {sayDated(book.dated.get(lead.printing)).main}
                </td>
                <td className="figure" data-head="would tell">
                  <Num why={EXPLAIN_GAIN}>{sayBits(lead.gain_bits)}</Num>
                </td>
              </tr>
            ))}
          </tbody>
        </table>
      </div>
    </Screen>
  );
}
