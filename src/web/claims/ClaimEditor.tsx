import { lazy, Suspense, useState } from 'react';
import type { ClaimRow } from '../../contract/index.ts';
import { useDesk } from '../app/context.ts';
import { addition, draftOf, replacement } from './changes.ts';

const ClaimForm = lazy(() => import('./ClaimForm.tsx'));

interface Props {
  /** The claim to change; without it one is added. */
  readonly claim?: ClaimRow;
  readonly printing?: string;
  readonly done: () => void;
}

/** The form in place, and what becomes of it. */
export function ClaimEditor({ claim: now, printing = '', done }: Props) {
  const { book, change } = useDesk();
  // As it was when the form was opened: an edit made outside meanwhile is then asked about.
  const [claim] = useState(now);
  return (
    <Suspense fallback={<p className="detail">Opening the form …</p>}>
      <ClaimForm
        first={draftOf(claim, printing)}
        act={claim ? 'Change it' : 'Add it'}
        cancel={done}
        save={(draft) => {
          change(claim ? replacement(draft, claim, book.dossier) : addition(draft, book.dossier));
          done();
        }}
      />
    </Suspense>
  );
}
