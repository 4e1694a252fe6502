import { useBook } from '../app/context.ts';
import { PrintingLink } from '../marks/index.ts';
import type { Book } from '../view/index.ts';
import { ClaimItem } from '../why/ClaimItem.tsx';

function datedByRow(book: Book, source: string) {
  const claims = [...book.dated.values()].flatMap((printing) => printing.claims);
  return new Map(
    claims.filter((claim) => claim.source === source).map((claim) => [claim.row, claim]),
  );
}

/** All that one source says, printing by printing. */
export function SourceClaims({ id }: { readonly id: string }) {
  const book = useBook();
  const dated = datedByRow(book, id);
  const claims = book.dossier.claims.filter((claim) => claim.source === id);
  return (
    <section className="claims">
      <h3>
        What it says <span>right</span>
      </h3>
      {claims.length === 0 ? <p className="detail">It says nothing yet.</p> : null}
      <ul>
        {claims.map((claim) => (
          <ClaimItem
            key={claim.row}
            claim={claim}
            dated={dated.get(claim.row)}
            about={
              claim.printings.length > 0 ? (
                claim.printings.map((printing, at) => (
                  <span key={printing}>
                    {at > 0 ? ' or ' : ''}
                    <PrintingLink id={printing} />
                  </span>
                ))
              ) : (
                <span>{book.products.get(claim.product ?? '')?.cells.title ?? claim.product}</span>
              )
            }
          />
        ))}
      </ul>
    </section>
  );
}
