import { Link } from '@tanstack/react-router';
import { PriceOf } from './PriceOf.tsx';

/** What a copy of a printing may fetch, on its page. */
export function PrintingPrice({ id }: { readonly id: string }) {
  return (
    <section>
      <h3>
        <Link to="/prices/$id" params={{ id }}>
          Prices
        </Link>
      </h3>
      <PriceOf id={id} height={220} />
    </section>
  );
}
