import { type FormEvent, type KeyboardEvent, useEffect, useRef, useState } from 'react';
import { SOURCE_KINDS } from '../../evidence/index.ts';
import { useBook } from '../app/context.ts';
import { fullName, productName } from '../view/index.ts';
import { isDateProperty, PROPERTIES } from '../words/index.ts';
import { type ClaimDraft, missing } from './changes.ts';
import { Field } from './Field.tsx';
import { readDate } from './readDate.ts';
import { SourceField } from './SourceField.tsx';

interface Props {
  readonly first: ClaimDraft;
  readonly act: string;
  readonly save: (draft: ClaimDraft) => void;
  readonly cancel: () => void;
}

/** A claim in a small form: Tab from field to field, Enter keeps it, Esc leaves it. */
export default function ClaimForm({ first, act, save, cancel }: Props) {
  const [draft, setDraft] = useState(first);
  const form = useRef<HTMLFormElement>(null);
  useEffect(() => {
    form.current?.scrollIntoView({ block: 'nearest' });
  }, []);
  const [tried, setTried] = useState(false);
  const set = (part: Partial<ClaimDraft>) => setDraft((now) => ({ ...now, ...part }));
  const date = isDateProperty(draft.property) ? readDate(draft.value) : undefined;
  const wrong = missing(draft) || (date?.wrong ?? '');
  const submit = (event: FormEvent) => {
    event.preventDefault();
    setTried(true);
    if (wrong === '') save(draft);
  };
  const leave = (event: KeyboardEvent) => {
    if (event.key !== 'Escape' || event.defaultPrevented) return;
    event.stopPropagation();
    cancel();
  };
  return (
    <form ref={form} className="claim-form" onSubmit={submit} onKeyDown={leave}>
      <Fields draft={draft} set={set} says={date?.says} />
      <p className="form-trouble" aria-live="polite">
        {tried ? wrong : ''}
      </p>
      <div className="acts">
        <button type="submit" className="choice chosen">
          {act}
        </button>
        <button type="button" className="choice" onClick={cancel}>
          Leave it
        </button>
      </div>
    </form>
  );
}

interface FieldsProps {
  readonly draft: ClaimDraft;
  readonly set: (part: Partial<ClaimDraft>) => void;
  /** What the value means, where it is a date. */
  readonly says: string | undefined;
}

function Fields({ draft, set, says }: FieldsProps) {
  const book = useBook();
  const isNew = draft.source !== '' && !knows(book, draft.source);
  return (
    <>
      <SourceField value={draft.source} set={(source) => set({ source })} />
      {isNew ? <KindField draft={draft} set={set} /> : null}
      <Field label="States its">
        {(ties) => (
          <select
            {...ties}
            value={draft.property}
            onChange={(event) => set({ property: event.target.value })}
          >
            {PROPERTIES.map(({ property, name, means }) => (
              <option key={property} value={property}>
                {name}: {means}
              </option>
            ))}
          </select>
        )}
      </Field>
      <Field label="As" {...(says === undefined ? {} : { hint: says })}>
        {(ties) => (
          <input
            {...ties}
            value={draft.value}
            onChange={(event) => set({ value: event.target.value })}
            placeholder={says !== undefined ? '1996-05-03, 1996-05, 1996~ …' : ''}
          />
        )}
      </Field>
      <Printings draft={draft} set={set} name={(id) => fullName(book, id)} />
      <Field label="Where it stands">
        {(ties) => (
          <input
            {...ties}
            value={draft.locator}
            onChange={(event) => set({ locator: event.target.value })}
          />
        )}
      </Field>
      <Field label="In its own words">
        {(ties) => (
          <input
            {...ties}
            value={draft.quote}
            onChange={(event) => set({ quote: event.target.value })}
          />
        )}
      </Field>
    </>
  );
}

function KindField({ draft, set }: Omit<FieldsProps, 'says'>) {
  return (
    <Field label="It is new: what kind is it?">
      {(ties) => (
        <select
          {...ties}
          value={draft.kind}
          onChange={(event) => set({ kind: event.target.value })}
        >
          {SOURCE_KINDS.map((kind) => (
            <option key={kind} value={kind}>
              {kind.replaceAll('-', ' ')}
            </option>
          ))}
        </select>
      )}
    </Field>
  );
}

function knows({ dossier }: ReturnType<typeof useBook>, source: string): boolean {
  return dossier.sources.some(({ id, cells }) => id === source || cells.title === source);
}

interface PrintingsProps {
  readonly draft: ClaimDraft;
  readonly set: (part: Partial<ClaimDraft>) => void;
  readonly name: (id: string) => string;
}

function Printings({ draft, set, name }: PrintingsProps) {
  const book = useBook();
  const { dossier } = book;
  if (draft.printings.length === 0 && draft.product !== '') {
    return (
      <p className="detail">
        Of the product {productName(book, draft.product)}, and through it of its contents.
      </p>
    );
  }
  const others = dossier.printings.filter(({ id }) => !draft.printings.includes(id));
  return (
    <div className="printing-list">
      <ul className="rows">
        {draft.printings.map((id) => (
          <li key={id}>
            <span>{name(id)}</span>
            {draft.printings.length > 1 ? (
              <button
                type="button"
                className="plain"
                onClick={() => set({ printings: draft.printings.filter((known) => known !== id) })}
              >
                Not this
              </button>
            ) : null}
          </li>
        ))}
      </ul>
      <Field label={draft.printings.length === 0 ? 'Of' : 'Or of one of these, not known which'}>
        {(ties) => (
          <select
            {...ties}
            value=""
            onChange={(event) => set({ printings: [...draft.printings, event.target.value] })}
          >
            <option value="">choose a printing</option>
            {others.map(({ id }) => (
              <option key={id} value={id}>
                {name(id)}
              </option>
            ))}
          </select>
        )}
      </Field>
    </div>
  );
}
