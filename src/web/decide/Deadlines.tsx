import type { Advised } from '../../contract/index.ts';
import { useDesk } from '../app/context.ts';
import { askCalendar } from '../wire/index.ts';
import { useAsked } from './supposed.ts';
import { sayIsoDay, sayLeft } from './tell.ts';

/** The deadlines of a copy, each with what started it. */
export function Deadlines({ copy }: { readonly copy: Advised }) {
  const { deadlines, unclear } = copy;
  if (deadlines.length + unclear.length === 0)
    return <p className="detail">None is entered for it in desk/deadlines.csv.</p>;
  return (
    <ul className="rows deadlines">
      {deadlines.map(({ against, startsFrom, startsOn, days, counts, last, left }) => (
        <li key={`${against} ${startsOn} ${days}`}>
          <span>
            {left >= 0 ? <mark>{sayIsoDay(last)}</mark> : sayIsoDay(last)}, against the {against}
            <span className="detail one-line">
              {days} {counts} days from “{startsFrom}” on {sayIsoDay(startsOn)}
            </span>
          </span>
          <span className="figure">{sayLeft(left)}</span>
        </li>
      ))}
      {unclear.map(({ against, why }) => (
        <li key={`${against} ${why}`}>
          <span>Against the {against}: its day cannot be told</span>
          <span>{why}</span>
        </li>
      ))}
    </ul>
  );
}

/** Hands out the deadlines of all copies for a calendar. */
export function CalendarFile() {
  const { say } = useDesk();
  const [{ on }] = useAsked();
  const save = async () => {
    try {
      const address = URL.createObjectURL(await askCalendar(on));
      const link = document.createElement('a');
      link.href = address;
      link.download = 'deadlines.ics';
      link.click();
      URL.revokeObjectURL(address);
    } catch (error) {
      say((error as Error).message);
    }
  };
  return (
    <button type="button" className="choice" onClick={() => void save()}>
      Deadlines for a calendar
    </button>
  );
}
