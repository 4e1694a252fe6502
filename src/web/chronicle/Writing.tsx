import type { ChronicleAnswer, Work } from '../../contract/index.ts';
import { useOrder } from '../wire/index.ts';
import { count } from '../words/index.ts';
import { FilmForm } from './FilmForm.tsx';
import { PublishForm } from './PublishForm.tsx';

interface Props {
  readonly places: ChronicleAnswer['places'];
  readonly prices: boolean;
  readonly work: Work | null;
}

/** Publishing and filming: where to, how, how far it has come, and its stop. */
export function Writing({ places, prices, work }: Props) {
  const { mutate: order, error } = useOrder();
  const busy = work?.state === 'running';
  return (
    <section className="writing">
      <h2>Publish</h2>
      <PublishForm place={places.site} {...{ prices, busy, order }} />
      <h2>Film</h2>
      <FilmForm place={places.film} {...{ prices, busy, order }} />
      {error ? (
        <p className="form-trouble" role="alert">
          {error.message}
        </p>
      ) : null}
      {work ? <Progress work={work} stop={() => order({ do: 'stop' })} /> : null}
    </section>
  );
}

interface ProgressProps {
  readonly work: Work;
  readonly stop: () => void;
}

function Progress({ work, stop }: ProgressProps) {
  const { state, step, share, said, left, does } = work;
  return (
    <div className="progress">
      {state === 'running' ? (
        <>
          <label>
            <span>
              {does === 'film' ? 'Film' : 'Site'}: {step}
            </span>
            <progress value={share} max={1} />
          </label>
          <button type="button" className="choice" onClick={stop}>
            Stop
          </button>
        </>
      ) : null}
      <p role="status" className={state === 'failed' ? 'form-trouble' : 'result'}>
        {said}
      </p>
      {left.length > 0 ? (
        <details className="outcomes">
          <summary>
            <span>{count(left.length, 'thing')} left out</span>
          </summary>
          <ul className="lacks">
            {left.map((sentence) => (
              <li key={sentence}>{sentence}</li>
            ))}
          </ul>
        </details>
      ) : null}
    </div>
  );
}
