import { useMutation } from '@tanstack/react-query';
import { type FormEvent, useState } from 'react';
import type { NotesAnswer } from '../../contract/index.ts';
import { Field } from '../claims/Field.tsx';
import { ask } from '../wire/index.ts';
import { type Draft, draftFrom } from './draft.ts';

const EXAMPLE = `no. 14 foil, wave 1 – pub. page 24.9.93; checklist says oct 93
no. 14 plain: seen 3/4/96 at the shop`;

/** Notes as they stand, sent to be read line by line. */
export function Paste({ done }: { readonly done: (draft: Draft) => void }) {
  const [text, setText] = useState('');
  const read = useMutation({
    mutationFn: (notes: string) => ask<NotesAnswer>('/api/notes', { text: notes, alone: true }),
    onSuccess: (answer, notes) => done(draftFrom(answer, notes)),
  });
  const submit = (event: FormEvent) => {
    event.preventDefault();
    if (text.trim() !== '') read.mutate(text);
  };
  return (
    <form className="paste" onSubmit={submit}>
      <Field label="Your notes">
        {(ties) => (
          <textarea
            {...ties}
            rows={10}
            value={text}
            placeholder={EXAMPLE}
            onChange={(event) => setText(event.target.value)}
          />
        )}
      </Field>
      {read.error ? (
        <p className="trouble" role="alert">
          {read.error.message}
        </p>
      ) : null}
      <div className="acts">
        <button type="submit" className="choice chosen" disabled={read.isPending}>
          {read.isPending ? 'Reading …' : 'Read them'}
        </button>
      </div>
    </form>
  );
}
