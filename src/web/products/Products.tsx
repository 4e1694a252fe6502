import { Link } from '@tanstack/react-router';
import { nameOfCode } from '../../catalogue/index.ts';
import { useDesk } from '../app/context.ts';
import { Screen } from '../marks/index.ts';
import { printingsIn } from './inside.ts';

/** What printings were sold or given in. */
export function Products() {
  const { book, add } = useDesk();
  const { products } = book.dossier;
  return (
    <Screen
      title="Products"
      lead="The boxes, games and numbers of periodicals that printings came in."
    >
      {products.length === 0 ? <p className="empty">The dossier names no product yet.</p> : null}
      <div className="acts">
        <button type="button" className="choice" onClick={() => add('product')}>
          Add a product
        </button>
      </div>
      <div className="wide">
        <table className="list">
          <thead>
            <tr>
              <th scope="col">Product</th>
              <th scope="col">Kind</th>
              <th scope="col">Market</th>
              <th scope="col">Series</th>
              <th scope="col" className="figure">
                Printings
              </th>
            </tr>
          </thead>
          <tbody>
            {products.map(({ id, cells }) => (
              <tr key={id}>
                <th scope="row">
                  <Link to="/products/$id" params={{ id }}>
                    {cells.title || id}
                  </Link>
                </th>
                <td data-head="kind">{cells.kind}</td>
                <td data-head="market">{nameOfCode(cells.market ?? '', 'region')}</td>
                <td data-head="series">{[cells.series, cells.issue].filter(Boolean).join(' ')}</td>
                <td className="figure" data-head="printings">
                  {printingsIn(book, id).length}
                </td>
              </tr>
            ))}
          </tbody>
        </table>
      </div>
    </Screen>
  );
}
