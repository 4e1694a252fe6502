import { useState } from 'react';
import { Screen } from '../marks/index.ts';
import type { Draft } from './draft.ts';
import { OpenFolder } from './OpenFolder.tsx';
import { Paste } from './Paste.tsx';
import { Recognised } from './Recognised.tsx';

/** Begin with a card of one's own: paste notes and see them recognised, or open a folder. */
export function Begin() {
  const [draft, setDraft] = useState<Draft>();
  return (
    <Screen
      title="Begin with your own card"
      lead="Paste what you have written down, as it stands: bullets, prose, a table, a ledger. Every line is shown with what was made of it, for you to correct. Nothing leaves this machine."
    >
      {draft ? (
        <Recognised draft={draft} set={setDraft} back={() => setDraft(undefined)} />
      ) : (
        <>
          <Paste done={setDraft} />
          <OpenFolder />
        </>
      )}
    </Screen>
  );
}
