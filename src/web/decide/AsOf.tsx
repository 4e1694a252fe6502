import { useId } from 'react';
import { useAsked } from './supposed.ts';

/** The day that the answers hold for; the dossier's newest where none is chosen. */
export function AsOf({ on }: { readonly on: string | null }) {
  const id = useId();
  const [asked, ask] = useAsked();
  return (
    <span className="as-of">
      <label htmlFor={id}>As of</label>
      <input
        id={id}
        type="date"
        value={asked.on ?? on ?? ''}
        onChange={({ target }) => {
          if (target.value !== '') ask({ on: target.value });
        }}
      />
      {asked.on === undefined ? null : (
        <button type="button" className="plain" onClick={() => ask({ on: undefined })}>
          The newest day
        </button>
      )}
    </span>
  );
}
