import { Link } from '@tanstack/react-router';
import { nameOfCode } from '../../catalogue/index.ts';
import { useBook } from '../app/context.ts';
import { productName } from '../view/index.ts';

/** What the dossier's own row says of the printing. */
export function PrintingFacts({ id }: { readonly id: string }) {
  const book = useBook();
  const cells = book.printings.get(id)?.cells ?? {};
  const facts = Object.entries(cells).filter(
    ([column, value]) => value !== '' && column !== 'subject' && column !== 'product',
  );
  return (
    <section>
      <h3>The printing</h3>
      <dl className="facts">
        {cells.product ? (
          <div>
            <dt>product</dt>
            <dd>
              {book.products.has(cells.product) ? (
                <Link to="/products/$id" params={{ id: cells.product }}>
                  {productName(book, cells.product)}
                </Link>
              ) : (
                cells.product
              )}
            </dd>
          </div>
        ) : null}
        {facts.map(([column, value]) => (
          <div key={column}>
            <dt>{column.replaceAll('_', ' ')}</dt>
            <dd>{sayCell(column, value)}</dd>
          </div>
        ))}
      </dl>
    </section>
  );
}

function sayCell(column: string, value: string): string {
  if (column === 'language') return nameOfCode(value, 'language');
  return column === 'market' ? nameOfCode(value, 'region') : value;
}
