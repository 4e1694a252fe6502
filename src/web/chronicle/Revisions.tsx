import type { WireRevision } from '../../contract/index.ts';
import { dayFrom, sayDay } from '../../evidence/index.ts';
import { useBook } from '../app/context.ts';
import { useRevisions } from '../wire/index.ts';
import { count } from '../words/index.ts';

const CLAIMS: Readonly<Record<string, string>> = {
  new: 'new',
  withdrawn: 'withdrawn',
  misread: 'misread before',
  place: 'place mended',
  slip: 'found to be a slip',
  'no-slip': 'no longer taken for a slip',
};

/** What was published, newest first, each with what changed and why; `done` is what came of the last work. */
export function Revisions({ done }: { readonly done: string }) {
  const { version } = useBook().dossier;
  const { data, error } = useRevisions(version, done);
  return (
    <section className="revisions">
      <h2>Revisions</h2>
      {error ? <p className="form-trouble">{error.message}</p> : null}
      {data?.faults.map((fault) => (
        <p key={fault} className="form-trouble">
          {fault}
        </p>
      ))}
      {data?.revisions.length === 0 ? (
        <p className="detail">None is frozen yet: publishing freezes the first.</p>
      ) : null}
      {data?.revisions.map((revision) => (
        <Revision key={revision.number} revision={revision} />
      ))}
    </section>
  );
}

function Revision({ revision }: { readonly revision: WireRevision }) {
  const { number, day, claims, figures, sha512, changed } = revision;
  return (
    <details className="outcomes">
      <summary>
        <span>
          Revision {number}, {sayDay(dayFrom(day))}
        </span>
        <span className="detail">
          {changed ? count(changed.figures.length, 'change') : 'first'}
        </span>
      </summary>
      <p className="detail">
        {count(figures, 'figure')} on {count(claims, 'claim')}; SHA-512 {sha512.slice(0, 12)}…
      </p>
      {changed && changed.claims.length > 0 ? (
        <p className="detail">
          Claims:{' '}
          {changed.claims.map(({ what, count: n }) => `${n} ${CLAIMS[what] ?? what}`).join(', ')}.
        </p>
      ) : null}
      <ul className="lacks">
        {changed?.figures.map(({ name, moved, because }) => (
          <li key={name}>
            {name}: {moved}
            <span className="detail one-line">{because}.</span>
          </li>
        ))}
      </ul>
    </details>
  );
}
