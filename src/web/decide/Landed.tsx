import type { WireLanded } from '../../contract/index.ts';
import { capital } from '../words/index.ts';

interface Props {
  readonly landed: WireLanded;
  readonly currency: string;
}

/** What a copy costs until it lies on the desk, line by line. */
export function Landed({ landed, currency }: Props) {
  if ('why' in landed) return <p className="empty">It cannot be told: {landed.why}.</p>;
  return (
    <>
      <div className="wide">
        <table className="list brief landed-lines">
          <thead>
            <tr>
              <th scope="col">Line</th>
              <th scope="col" className="figure">
                {currency}
              </th>
              <th scope="col">How</th>
            </tr>
          </thead>
          <tbody>
            {landed.lines.map(({ name, share, parcel, how }) => (
              <tr key={name}>
                <th scope="row">{name}</th>
                <td className="figure">{share}</td>
                <td>
                  {how}
                  {parcel === share ? '' : `; ${parcel} for the whole parcel`}
                </td>
              </tr>
            ))}
          </tbody>
          <tfoot>
            <tr>
              <th scope="row">landed</th>
              <td className="figure">
                <strong>{landed.total}</strong>
              </td>
              <td />
            </tr>
          </tfoot>
        </table>
      </div>
      {landed.assumed.map((one) => (
        <p key={one} className="detail assumed">
          {capital(one)}.
        </p>
      ))}
    </>
  );
}
