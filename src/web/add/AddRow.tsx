import { useRouter } from '@tanstack/react-router';
import { type FormEvent, useState } from 'react';
import { Dialog, Heading, Modal, ModalOverlay } from 'react-aria-components';
import type { Cells } from '../../contract/index.ts';
import { useDesk } from '../app/context.ts';
import { Field } from '../claims/Field.tsx';
import { Columns } from './Columns.tsx';
import { type Addable, addingStep, suggestedId, wrongIn } from './rows.ts';

interface Props {
  readonly what: Addable;
  readonly close: () => void;
}

/** A form for a new printing or product: Tab from field to field, Enter adds it, Esc leaves it. */
export default function AddRow({ what, close }: Props) {
  const { book, change } = useDesk();
  const { history } = useRouter();
  const [cells, setCells] = useState<Cells>({});
  const [own, setOwn] = useState<string>();
  const [tried, setTried] = useState(false);
  const id = own ?? suggestedId(what, cells, book.dossier);
  const wrong = wrongIn(what, cells, id, book.dossier);
  const submit = (event: FormEvent) => {
    event.preventDefault();
    setTried(true);
    if (wrong !== '') return;
    change(addingStep(what, cells, id, book.dossier));
    close();
    history.push(`/${what}s/${id}`);
  };
  return (
    <ModalOverlay isOpen onOpenChange={close} className="overlay">
      <Modal className="modal">
        <Dialog>
          <Heading slot="title">{what === 'printing' ? 'Add a printing' : 'Add a product'}</Heading>
          <p className="detail">
            Leave empty what you do not know; write none where it is known to have none.
          </p>
          <form className="add-row" onSubmit={submit} noValidate>
            <Columns what={what} cells={cells} set={setCells} />
            <Field label="Id" hint="What other rows call it by; it does not change later.">
              {(ties) => (
                <input
                  {...ties}
                  value={id}
                  spellCheck={false}
                  onChange={(event) => setOwn(event.target.value || undefined)}
                />
              )}
            </Field>
            <p className="form-trouble" aria-live="polite">
              {tried ? wrong : ''}
            </p>
            <div className="acts">
              <button type="submit" className="choice chosen">
                Add it
              </button>
              <button type="button" className="choice" onClick={close}>
                Leave it
              </button>
            </div>
          </form>
        </Dialog>
      </Modal>
    </ModalOverlay>
  );
}
