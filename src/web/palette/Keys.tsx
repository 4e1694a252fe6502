import { useState } from 'react';
import { Button, Dialog, Heading, Modal, ModalOverlay } from 'react-aria-components';
import { setSingleKeys, singleKeys } from '../app/shortcuts.ts';

type Key = readonly [keys: string, does: string];

const KEYS: readonly (readonly [where: string, keys: readonly Key[]])[] = [
  [
    'Everywhere',
    [
      ['Ctrl K', 'find or do'],
      ['Ctrl Z, Ctrl Shift Z', 'undo, redo'],
      ['?', 'this list'],
    ],
  ],
  [
    'Chronology',
    [
      ['↑ ↓, Page, Home, End', 'from lane to lane'],
      ['Enter', 'open a lane: why?'],
      ['Esc', 'close, and back to the lanes'],
      ['+ −', 'fewer or more years'],
      ['← →', 'earlier or later years'],
      ['] [', 'fewer or more days in the close-up'],
      ['0', 'both axes as at first'],
    ],
  ],
  [
    'Bench, on a picture',
    [
      ['+ −', 'closer, further away'],
      ['← → ↑ ↓', 'another part of it'],
      ['0', 'all of it'],
      ['L, then ← → ↑ ↓', 'the loupe, and where it is held: 1 mm, with Shift 0.1 mm'],
      ['] [', 'loupe: fewer or more millimetres'],
      ['B', 'side by side: swap the two pictures in one place'],
      [', .', 'moved lamp: turn the lamp'],
      ['Tab, then ← → ↑ ↓', 'move a corner by 1 pixel, with Shift by 0.1'],
      ['← → ↑ ↓, Enter, Backspace', 'while a mark is added: move, set a point, take it back'],
    ],
  ],
];

/** The keys, and the switch for those without Ctrl. */
export default function Keys({ close }: { readonly close: () => void }) {
  const [on, setOn] = useState(singleKeys);
  return (
    <ModalOverlay isOpen isDismissable onOpenChange={close} className="overlay">
      <Modal className="modal">
        <Dialog>
          <Heading slot="title">Keys</Heading>
          {KEYS.map(([where, keys]) => (
            <section key={where}>
              <h3>{where}</h3>
              <dl className="keys">
                {keys.map(([key, does]) => (
                  <div key={key}>
                    <dt>
                      <kbd>{key}</kbd>
                    </dt>
                    <dd>{does}</dd>
                  </div>
                ))}
              </dl>
            </section>
          ))}
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
