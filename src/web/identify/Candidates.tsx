import type { IdentifyAnswer } from '../../contract/index.ts';
import { useBook } from '../app/context.ts';
import { Chance, PrintingLink } from '../marks/index.ts';
import { type Book, shortName } from '../view/index.ts';
import { count, sayP } from '../words/index.ts';

/** Candidates below it are counted and not listed. */
const SHOWN = 0.001;

const WHY =
  'From the readings, each with its chance of being wrong, and from how many of each are about. All probabilities and the rest add up to 1.';

/** What the copy may be, the likeliest first, and how surely the first is told from the second. */
export function Candidates({ answer }: { readonly answer: IdentifyAnswer }) {
  const book = useBook();
  const { candidates, unlisted, alike } = answer;
  const shown = candidates.filter(({ p }) => p >= SHOWN);
  const [first] = shown;
  const left = candidates.length - shown.length;
  return (
    <section aria-label="What it may be" aria-live="polite">
      {first ? (
        <>
          <p className="day long">{candidateName(book, answer, first.id)}</p>
          <p className="worth">
            {first.kind === 'printing' ? '' : `${first.kind}, `}probability {sayP(first.p)}
          </p>
          <p className="why">{sayTwo(book, answer)}</p>
        </>
      ) : null}
      {alike.map(([one, other]) => (
        <p key={`${one} ${other}`} className="slip-note">
          <strong>Not to be told apart</strong> by any trait that is known:{' '}
          {candidateName(book, answer, one)} and {candidateName(book, answer, other)}.
        </p>
      ))}
      <h3>
        <span>It is</span> <span>probability</span>
      </h3>
      <ul className="rows candidates">
        {shown.map(({ id, kind, p }) => (
          <li key={id}>
            <span>
              {kind === 'printing' ? <PrintingLink id={id} /> : candidateName(book, answer, id)}
              {kind === 'printing' ? null : <span className="detail one-line">{kind}</span>}
            </span>
            <Chance p={p} why={WHY} against={kind !== 'printing'} />
          </li>
        ))}
        <li>
          <span>none of these: not in the dossier</span>
          <Chance p={unlisted} why={WHY} />
        </li>
      </ul>
      {left > 0 ? (
        <p className="detail">
          {count(left, 'other')}, below 0.001{left > 1 ? ' each' : ''}.
        </p>
      ) : null}
    </section>
  );
}

/** What a candidate is called: a printing by its name, a kind of counterfeit by the dossier's words. */
export function candidateName(book: Book, { kinds }: Pick<IdentifyAnswer, 'kinds'>, id: string) {
  if (book.printings.has(id)) return shortName(book, id);
  const note = kinds.find((kind) => kind.id === id)?.note ?? '';
  return note.split(/[;.]/)[0] || id;
}

/** The two explanations that fit best, and how much better one does. */
function sayTwo(book: Book, answer: IdentifyAnswer): string {
  const [first, second] = answer.candidates;
  if (!first || !second) return 'Nothing else in the dossier could be compared.';
  const times = first.p / Math.max(second.p, 1e-12);
  const how = times >= 1000 ? 'more than 1,000' : times.toFixed(times < 10 ? 1 : 0);
  return `It is ${how} times as probable as the next explanation, ${candidateName(book, answer, second.id)}.`;
}
