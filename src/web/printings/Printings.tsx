import { nameOfCode } from '../../catalogue/index.ts';
import { useBook, useDesk } from '../app/context.ts';
import { Num, PrintingLink, Screen } from '../marks/index.ts';
import { lanesOf, NO_FILTER, productName } from '../view/index.ts';
import { explainBest, sayDated } from '../words/index.ts';

/** Every printing, in order of release. */
export function Printings() {
  const book = useBook();
  return (
    <Screen
      title="Printings"
      lead="Every issue of the card that collectors tell apart, earliest first."
    >
      <AddOne />
      <div className="wide">
        <table className="list">
          <thead>
            <tr>
              <th scope="col">Printing</th>
              <th scope="col">Number</th>
              <th scope="col">Finish</th>
              <th scope="col">Market</th>
              <th scope="col">Product</th>
              <th scope="col">Release</th>
              <th scope="col" className="figure">
                Probability
              </th>
            </tr>
          </thead>
          <tbody>
            {lanesOf(book, NO_FILTER).map((id) => (
              <Row key={id} id={id} />
            ))}
          </tbody>
        </table>
      </div>
    </Screen>
  );
}

function AddOne() {
  const { add } = useDesk();
  return (
    <div className="acts">
      <button type="button" className="choice" onClick={() => add('printing')}>
        Add a printing
      </button>
    </div>
  );
}

function Row({ id }: { readonly id: string }) {
  const book = useBook();
  const cells = book.printings.get(id)?.cells ?? {};
  const dated = book.dated.get(id);
  const said = sayDated(dated);
  return (
    <tr>
      <th scope="row">
        <PrintingLink id={id} />
      </th>
      <td data-head="number">{cells.number}</td>
      <td data-head="finish">{cells.finish}</td>
      <td data-head="market">{nameOfCode(cells.market ?? '', 'region')}</td>
      <td data-head="product">{productName(book, cells.product ?? '')}</td>
      <td className="no-break" data-head="release">
        {said.main}
      </td>
      <td className="figure" data-head="probability">
        {dated && book.dating && said.p !== null ? (
          <Num why={explainBest(dated, book.dating)}>{said.sub}</Num>
        ) : (
          said.sub
        )}
      </td>
    </tr>
  );
}
