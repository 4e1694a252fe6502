import { Link } from '@tanstack/react-router';
import { useBook } from '../app/context.ts';

/** What to add first, where there is nothing yet to date. */
export function Empty() {
  const { dossier } = useBook();
  if (dossier.printings.length === 0) {
    return (
      <p className="empty">
        This dossier has no printing that can be used.{' '}
        {dossier.faults.length > 0 ? (
          <>
            <Link to="/faults">See what is wrong in its files</Link>, or
          </>
        ) : (
          'Add a row to printings.csv, or'
        )}{' '}
        <Link to="/begin">begin with your own notes</Link>.
      </p>
    );
  }
  if (dossier.claims.length > 0) return null;
  return (
    <p className="empty">
      No claim yet, so nothing can be dated. Add first what one source says of one printing: open a
      lane, and write under <em>Add a claim</em> who says so, and the day, month or year it names. A
      cover date or a year on a label will do; say how it stands there, and nothing more exact.
    </p>
  );
}
