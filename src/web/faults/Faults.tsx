import type { WireFault } from '../../contract/index.ts';
import { useBook } from '../app/context.ts';
import { Screen } from '../marks/index.ts';
import { count } from '../words/index.ts';

const SHOWN = 500;

/** What cannot be used in the dossier's files, and what was expected instead. */
export function Faults() {
  const { dossier } = useBook();
  const { faults } = dossier;
  return (
    <Screen
      title="Faults"
      lead={
        faults.length === 0
          ? 'Nothing in the files is amiss.'
          : `${count(faults.length, 'fault')} in the files of ${dossier.folder}. Rows that can be used are used; these are not, or only in part.`
      }
    >
      {faults.length > 0 ? (
        <div className="wide">
          <table className="list">
            <thead>
              <tr>
                <th scope="col">File</th>
                <th scope="col" className="figure">
                  Row
                </th>
                <th scope="col">Column</th>
                <th scope="col">Found</th>
                <th scope="col">Expected</th>
                <th scope="col">That is</th>
              </tr>
            </thead>
            <tbody>
              {faults.slice(0, SHOWN).map((fault, at) => (
                // biome-ignore lint/suspicious/noArrayIndexKey: two faults may be alike in all
                <Row key={at} fault={fault} />
              ))}
            </tbody>
          </table>
        </div>
      ) : null}
      {faults.length > SHOWN ? (
        <p className="detail">
          And {faults.length - SHOWN} more; “printlore check” in a terminal lists all of them.
        </p>
      ) : null}
    </Screen>
  );
}

function Row({ fault }: { readonly fault: WireFault }) {
  return (
    <tr>
      <th scope="row">{fault.file}</th>
      <td className="figure" data-head="row">
        {fault.row ?? ''}
      </td>
      <td data-head="column">{fault.column ?? ''}</td>
      <td className="found" data-head="found">
        {fault.found}
      </td>
      <td data-head="expected">{fault.expected}</td>
      <td data-head="that is">{fault.message}</td>
    </tr>
  );
}
