import { PrintingLink } from '../marks/index.ts';

/** The printings that share its day. */
export function Together({ ids }: { readonly ids: readonly string[] }) {
  if (ids.length === 0) return null;
  return (
    <section>
      <h3>Shares the day with</h3>
      <ul className="rows">
        {ids.map((id) => (
          <li key={id}>
            <PrintingLink id={id} />
          </li>
        ))}
      </ul>
    </section>
  );
}
