import type { BenchFace } from '../../contract/index.ts';
import { capital } from '../words/index.ts';
import { besideRows } from './besideRows.ts';

interface Props {
  readonly now: BenchFace;
  readonly other: BenchFace;
  readonly names: readonly [now: string, other: string];
}

/** What was measured on two pictures of a copy, side by side. */
export function BesideMeasured({ now, other, names }: Props) {
  return (
    <>
      <h3>Measured on both</h3>
      <table className="beside-measured">
        <thead>
          <tr>
            <td />
            {names.map((name) => (
              <th key={name} scope="col">
                {name}
              </th>
            ))}
            <th scope="col">first less second</th>
          </tr>
        </thead>
        <tbody>
          {besideRows(now, other).map(({ what, now: own, other: its, difference, apart }) => (
            <tr key={what}>
              <th scope="row">{capital(what)}</th>
              <td>{own}</td>
              <td>{its}</td>
              <td>{apart ? <mark>{difference}</mark> : difference}</td>
            </tr>
          ))}
        </tbody>
      </table>
      <p className="detail">
        Doubts hold 95 of 100. Marked: further apart than the doubt, which one difference in twenty
        is by chance. Each picture is measured by itself, by what it can show.
      </p>
      {other.whyNot ? <p className="slip-note">{other.whyNot}</p> : null}
    </>
  );
}
