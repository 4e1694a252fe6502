import { useState } from 'react';
import { useBook } from '../app/context.ts';
import { ClaimEditor } from '../claims/ClaimEditor.tsx';
import { claimsOf } from '../view/index.ts';
import { ClaimItem } from './ClaimItem.tsx';

/** The claims on a printing with their probability of being right, and a form to add one. */
export function ClaimList({ printing }: { readonly printing: string }) {
  const book = useBook();
  const [adding, setAdding] = useState(false);
  const claims = [...claimsOf(book, printing)].sort(
    (a, b) => (b.dated?.p_right ?? 2) - (a.dated?.p_right ?? 2),
  );
  return (
    <section className="claims">
      <h3>
        Claims <span>right</span>
      </h3>
      {claims.length === 0 ? <p className="detail">No source says anything of it yet.</p> : null}
      <ul>
        {claims.map((joined) => (
          <ClaimItem key={joined.claim.row} {...joined} />
        ))}
      </ul>
      {adding ? (
        <ClaimEditor printing={printing} done={() => setAdding(false)} />
      ) : (
        <button type="button" className="choice add-claim" onClick={() => setAdding(true)}>
          Add a claim
        </button>
      )}
    </section>
  );
}
