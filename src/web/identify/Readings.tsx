import { sayTrait } from '../../catalogue/index.ts';
import type { CopyReading, IdentifyAnswer } from '../../contract/index.ts';

interface Props {
  readonly answer: IdentifyAnswer;
  readonly unsee: (trait: string) => void;
}

const FROM: Readonly<Record<CopyReading['from'], string>> = {
  seen: 'seen by you',
  told: 'seen by you',
  measured: 'measured on the bench',
  listing: 'the seller’s words',
  label: 'the slab’s label',
};

/** What is known of the copy so far, and where it comes from. */
export function Readings({ answer, unsee }: Props) {
  const { readings, unused } = answer;
  return (
    <section>
      <h3>
        <span>Known so far</span>
      </h3>
      {readings.length === 0 ? (
        <p className="detail">Nothing yet: tick what you see.</p>
      ) : (
        <ul className="rows readings">
          {readings.map((one) => (
            <li key={`${one.from} ${one.row} ${one.trait} ${one.value}`}>
              <span>
                {sayTrait(one.trait)}: {one.value}
                <span className="detail one-line">
                  {FROM[one.from]}
                  {one.sees === '' || one.from === 'listing' || one.from === 'label'
                    ? ''
                    : `, by ${one.sees}`}
                </span>
              </span>
              {one.from === 'seen' || one.from === 'told' ? (
                <button
                  type="button"
                  className="plain"
                  aria-label={`Take back ${one.trait}`}
                  onClick={() => unsee(one.trait)}
                >
                  Take back
                </button>
              ) : null}
            </li>
          ))}
        </ul>
      )}
      {unused.map(({ trait, value }) => (
        <p key={`${trait} ${value}`} className="detail">
          “{sayTrait(trait)}: {value}” says nothing: no printing has a value of it that could be
          compared.
        </p>
      ))}
    </section>
  );
}
