import { useRouter } from '@tanstack/react-router';
import { useMemo, useState } from 'react';
import {
  Autocomplete,
  Dialog,
  Input,
  Menu,
  MenuItem,
  Modal,
  ModalOverlay,
  TextField,
} from 'react-aria-components';
import { type Desk, useDesk } from '../app/context.ts';
import { useLook } from '../app/look.ts';
import { found, thingsOf } from './things.ts';

/** Find or do: a few letters lead to a screen, a printing, a source or an action. */
export default function Palette({ close }: { readonly close: () => void }) {
  const desk = useDesk();
  const { history } = useRouter();
  const [, choose] = useLook();
  const [typed, setTyped] = useState('');
  const things = useMemo(() => thingsOf(desk.book), [desk.book]);
  const shown = found(things, typed);
  const act = (id: string) => {
    close();
    const [way, what = ''] = [id.slice(0, 2), id.slice(3)];
    if (way === 'go') history.push(what);
    else if (what === 'light' || what === 'dark') choose(what);
    else if (what === 'print') window.setTimeout(() => window.print(), 50);
    else doIt(desk, what);
  };
  return (
    <ModalOverlay isOpen isDismissable onOpenChange={close} className="overlay high">
      <Modal className="modal palette">
        <Dialog aria-label="Find or do">
          <Autocomplete inputValue={typed} onInputChange={setTyped}>
            <TextField aria-label="Find or do" autoFocus>
              <Input placeholder="Find or do …" />
            </TextField>
            <Menu
              aria-label="Found"
              items={shown}
              className="found"
              onAction={(key) => act(String(key))}
              renderEmptyState={() => <p className="detail">Nothing by that name.</p>}
            >
              {(thing) => (
                <MenuItem id={thing.id} textValue={thing.words}>
                  <span>{thing.words}</span> <span className="detail">{thing.kind}</span>
                </MenuItem>
              )}
            </Menu>
          </Autocomplete>
        </Dialog>
      </Modal>
    </ModalOverlay>
  );
}

function doIt(desk: Desk, what: string): void {
  if (what === 'undo') desk.undo();
  else if (what === 'redo') desk.redo();
  else if (what === 'keys') desk.keys();
  else if (what === 'printing' || what === 'product') desk.add(what);
}
