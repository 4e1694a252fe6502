import { useNavigate } from '@tanstack/react-router';
import type { ListingAnswer } from '../../contract/index.ts';
import { useDesk } from '../app/context.ts';
import { freeId } from '../bench/newCopy.ts';
import { useBenchList } from '../wire/index.ts';
import { keepingStep, type ListingDraft } from './draft.ts';

interface Props {
  readonly answer: ListingAnswer;
  readonly draft: ListingDraft;
}

/** Candidates of at least this probability are written down. */
const LIKELY = 0.05;

/** Puts the listing on the desk as an offered copy, one step that undo takes back. */
export function Keep({ answer, draft }: Props) {
  const { book, change } = useDesk();
  const navigate = useNavigate();
  const { data } = useBenchList(book.dossier.version);
  const printing = answer.identified.candidates
    .filter(({ kind, p }) => kind === 'printing' && p >= LIKELY)
    .map(({ id }) => id)
    .join('|');
  const keep = () => {
    const id = freeId((data?.copies ?? []).map((copy) => copy.id));
    change(keepingStep(draft, id, printing));
    void navigate({ to: '/decide/$id', params: { id } });
  };
  return (
    <div className="acts">
      <button type="button" className="choice" disabled={!data} onClick={keep}>
        Keep it as an offered copy
      </button>
    </div>
  );
}
