import { count } from '../words/index.ts';
import { AS_IT_IS, countSupposed, useAsked } from './supposed.ts';

/** Says that answers rest on something supposed, and takes it away. */
export function SupposedNote() {
  const [{ supposed }, ask] = useAsked();
  const n = countSupposed(supposed);
  if (n === 0) return null;
  return (
    <p className="notice supposed-note" role="status">
      <mark>Supposed:</mark> {count(n, 'value')} of yours in the place of what the desk has. Nothing
      is written.{' '}
      <button type="button" className="plain" onClick={() => ask({ supposed: AS_IT_IS })}>
        As it is
      </button>
    </p>
  );
}
