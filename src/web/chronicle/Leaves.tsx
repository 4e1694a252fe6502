import type { WireLeaving } from '../../contract/index.ts';
import { useBook } from '../app/context.ts';
import { useLeaving } from '../wire/index.ts';
import { count } from '../words/index.ts';
import { groupsBy, placeOf } from './tell.ts';

interface Props {
  readonly prices: boolean;
  readonly setPrices: (prices: boolean) => void;
}

/** What a publication holds that could harm, and what stays at home, before anything is written. */
export function Leaves({ prices, setPrices }: Props) {
  const { version } = useBook().dossier;
  const { data, error } = useLeaving(version, prices);
  const [leave, stay] = [true, false].map(
    (so) => data?.leaving.filter(({ leaves }) => leaves === so) ?? [],
  );
  return (
    <section className="leaves">
      <h2>What leaves</h2>
      <label className="check-field">
        <input
          type="checkbox"
          checked={prices}
          onChange={({ target }) => setPrices(target.checked)}
        />
        <span>Show what copies may fetch</span>
      </label>
      {error ? <p className="form-trouble">{error.message}</p> : null}
      {data ? (
        <>
          <p className="detail">
            {count(leave?.length ?? 0, 'thing')} to look at before{' '}
            {leave?.length === 1 ? 'it' : 'they'} leave. Names that the dossier does not know as
            such, and words within pictures, are not found: read the texts and look at the pictures
            once more.
          </p>
          <Things of={leave ?? []} by={({ what }) => what} />
          <h3>Stays at home</h3>
          <Things of={stay ?? []} by={({ why }) => why} />
        </>
      ) : null}
    </section>
  );
}

interface ThingsProps {
  readonly of: readonly WireLeaving[];
  readonly by: (one: WireLeaving) => string;
}

function Things({ of, by }: ThingsProps) {
  return groupsBy(of, by).map(([head, things]) => (
    <details key={head} className="outcomes">
      <summary>
        <span className="kind">{head}</span>
        <span className="detail">{things.length}</span>
      </summary>
      <ul className="lacks">
        {things.map((one) => (
          <li key={`${placeOf(one)} ${one.found}`}>
            {one.found}
            <span className="detail one-line">
              <span className="place">{placeOf(one)}</span> {one.why === head ? '' : `· ${one.why}`}
            </span>
          </li>
        ))}
      </ul>
    </details>
  ));
}
