import { Link } from '@tanstack/react-router';
import type { BenchList } from '../../contract/index.ts';
import { useBook } from '../app/context.ts';
import { PrintingLink, Screen } from '../marks/index.ts';
import { useBenchList } from '../wire/index.ts';
import { count } from '../words/index.ts';
import { NewCopy } from './NewCopy.tsx';

/** The copies on the desk, and what pictures there are of each. */
export function Bench() {
  const book = useBook();
  const { data, error } = useBenchList(book.dossier.version);
  const none = data?.copies.length === 0;
  return (
    <Screen
      title="Bench"
      lead={
        none
          ? 'No copy is on the desk yet: lay one on the bench with two pictures and the seller’s words.'
          : 'Your copies, each measured from its own pictures.'
      }
    >
      {error ? (
        <p className="trouble" role="alert">
          {error.message}
        </p>
      ) : null}
      {data && !none ? (
        <div className="wide">
          <table className="list">
            <thead>
              <tr>
                <th scope="col">Copy</th>
                <th scope="col">Printing</th>
                <th scope="col">Status</th>
                <th scope="col">Front</th>
                <th scope="col">Back</th>
              </tr>
            </thead>
            <tbody>
              {data.copies.map((copy) => (
                <Row key={copy.id} copy={copy} />
              ))}
            </tbody>
          </table>
        </div>
      ) : null}
      {data ? <NewCopy taken={data.copies.map(({ id }) => id)} /> : null}
    </Screen>
  );
}

type Copy = BenchList['copies'][number];

function Row({ copy }: { readonly copy: Copy }) {
  return (
    <tr>
      <th scope="row">
        <Link to="/bench/$id" params={{ id: copy.id }}>
          {copy.id}
        </Link>
      </th>
      <td data-head="printing">
        {copy.printing.split('|').map((id, at) => (
          <span key={id}>
            {at > 0 ? ' or ' : ''}
            <PrintingLink id={id.trim()} />
          </span>
        ))}
      </td>
      <td data-head="status">{copy.status}</td>
      <td data-head="front">{sayPictures(copy, 'front')}</td>
      <td data-head="back">{sayPictures(copy, 'back')}</td>
    </tr>
  );
}

function sayPictures({ pictures }: Copy, side: 'front' | 'back'): string {
  const own = pictures.filter((one) => one.side === side);
  const number = (light: string) => own.filter((one) => one.light === light).length;
  const said = [
    ...(number('still') ? ['a picture'] : []),
    ...(number('raking') ? ['raking light'] : []),
    ...(number('lamp') ? [count(number('lamp'), 'lamp')] : []),
  ];
  return said.join(', ') || 'no picture';
}
