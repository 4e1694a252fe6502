import { useState } from 'react';
import { Button, Dialog, Heading, Modal, ModalOverlay } from 'react-aria-components';
import { setSingleKeys, singleKeys } from '../app/shortcuts.ts';

const KEYS: readonly (readonly [string, string])[] = [
  ['Ctrl K', 'find or do'],
  ['Ctrl Z, Ctrl Shift Z', 'undo, redo'],
  ['?', 'this list'],
  ['↑ ↓, Page, Home, End', 'from lane to lane'],
  ['Enter', 'open a lane: why?'],
  ['Esc', 'close, and back to the lanes'],
  ['+ −', 'fewer or more years'],
  ['← →', 'earlier or later years'],
  ['] [', 'fewer or more days in the close-up'],
  ['0', 'both axes as at first'],
];

/** The keys, and the switch for those without Ctrl. */
export default function Keys({ close }: { readonly close: () => void }) {
  const [on, setOn] = useState(singleKeys);
  return (
    <ModalOverlay isOpen isDismissable onOpenChange={close} className="overlay">
      <Modal className="modal">
        <Dialog>
          <Heading slot="title">Keys</Heading>
          <dl className="keys">
            {KEYS.map(([keys, does]) => (
              <div key={keys}>
                <dt>
                  <kbd>{keys}</kbd>
                </dt>
                <dd>{does}</dd>
              </div>
            ))}
          </dl>
          <label className="check-field">
            <input
              type="checkbox"
              checked={on}
              onChange={(event) => {
                setSingleKeys(event.target.checked);
                setOn(event.target.checked);
              }}
            />{' '}
            Keys without Ctrl are on
          </label>
          <div className="acts">
            <Button className="choice" onPress={close}>
              Close
            </Button>
          </div>
        </Dialog>
      </Modal>
    </ModalOverlay>
  );
}
