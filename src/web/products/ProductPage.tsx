import { useParams } from '@tanstack/react-router';
import { nameOfCode } from '../../catalogue/index.ts';
import { useBook } from '../app/context.ts';
import { PrintingLink, Screen } from '../marks/index.ts';
import { ClaimItem } from '../why/ClaimItem.tsx';
import { sayDated } from '../words/index.ts';
import { printingsIn } from './inside.ts';

/** One product: what it is, what lies in it, and what sources say of it. */
export function ProductPage() {
  const { id } = useParams({ from: '/products/$id' });
  const book = useBook();
  const cells = book.products.get(id)?.cells;
  if (!cells) {
    return (
      <Screen title="No such product">
        <p className="lead">The dossier has no product with the id {id}.</p>
      </Screen>
    );
  }
  const about = [
    cells.kind,
    nameOfCode(cells.market ?? '', 'region'),
    [cells.series, cells.issue].filter(Boolean).join(' '),
    cells.list_price ? `${cells.list_price} ${cells.currency ?? ''}` : '',
  ].filter(Boolean);
  return (
    <Screen title={cells.title || id} lead={about.join(', ')}>
      <div className="columns">
        <Contents id={id} />
        <Claims id={id} />
      </div>
    </Screen>
  );
}

function Contents({ id }: { readonly id: string }) {
  const book = useBook();
  return (
    <section>
      <h3>
        In it <span>release</span>
      </h3>
      <ul className="rows">
        {printingsIn(book, id).map(({ printing, odds }) => (
          <li key={printing}>
            <span>
              <PrintingLink id={printing} />
              {odds && odds !== '1' ? <span className="detail"> in {odds} of them</span> : null}
            </span>
            <span>{sayDated(book.dated.get(printing)).main}</span>
          </li>
        ))}
      </ul>
    </section>
  );
}

function Claims({ id }: { readonly id: string }) {
  const book = useBook();
  const inside = new Set(printingsIn(book, id).map(({ printing }) => printing));
  const dated = new Map(
    [...book.dated.values()]
      .filter((printing) => inside.has(printing.id))
      .flatMap(({ claims }) => claims.map((claim) => [claim.row, claim] as const)),
  );
  const claims = book.dossier.claims.filter((claim) => claim.product === id);
  return (
    <section className="claims">
      <h3>
        Claims on the product <span>right</span>
      </h3>
      {claims.length === 0 ? <p className="detail">No source says anything of it itself.</p> : null}
      <ul>
        {claims.map((claim) => (
          <ClaimItem key={claim.row} claim={claim} dated={dated.get(claim.row)} />
        ))}
      </ul>
    </section>
  );
}
