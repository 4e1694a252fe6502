import { Dialog, Heading, Modal, ModalOverlay } from 'react-aria-components';
import type { Cells, WireChange, WireConflict } from '../../contract/index.ts';
import { useDesk } from '../app/context.ts';
import type { Step } from '../wire/index.ts';

interface Props {
  readonly step: Step;
  readonly conflicts: readonly WireConflict[];
  readonly close: () => void;
}

function sameChange(a: WireChange, b: WireChange): boolean {
  return JSON.stringify(a) === JSON.stringify(b);
}

/** The step once more, made from what the rows hold now. */
export function again(step: Step, conflicts: readonly WireConflict[]): Step {
  const changes = step.changes.map((change): WireChange | undefined => {
    const conflict = conflicts.find((one) => sameChange(one.change, change));
    if (!conflict) return change;
    if (conflict.now) return { ...change, before: conflict.now };
    return change.after ? { file: change.file, op: 'add', after: change.after } : undefined;
  });
  return { label: step.label, changes: changes.filter((change) => change !== undefined) };
}

/** Both sides changed one row: shows them, and asks. */
export default function Conflict({ step, conflicts, close }: Props) {
  const { change, say } = useDesk();
  const mine = () => {
    close();
    const next = again(step, conflicts);
    if (next.changes.length > 0) change(next);
  };
  const theirs = () => {
    close();
    say(`${step.label}: left as the file has it.`);
  };
  return (
    <ModalOverlay isOpen onOpenChange={(open) => (open ? undefined : theirs())} className="overlay">
      <Modal className="modal">
        <Dialog>
          <Heading slot="title">The file was edited meanwhile</Heading>
          <p>{step.label}: nothing was written. Which shall stand?</p>
          {conflicts.map((conflict) => (
            <Sides key={JSON.stringify(conflict.change)} conflict={conflict} />
          ))}
          <div className="acts">
            <button type="button" className="choice" onClick={theirs}>
              What the file has
            </button>
            <button type="button" className="choice chosen" onClick={mine}>
              What I wrote
            </button>
          </div>
        </Dialog>
      </Modal>
    </ModalOverlay>
  );
}

function Sides({ conflict }: { readonly conflict: WireConflict }) {
  const { change, now: found, message } = conflict;
  const columns = [...new Set([...Object.keys(found ?? {}), ...Object.keys(change.after ?? {})])];
  const differ = columns.filter((column) => found?.[column] !== change.after?.[column]);
  return (
    <>
      <p className="detail">{message}</p>
      <table className="list">
        <thead>
          <tr>
            <th>{change.file}</th>
            <th>in the file</th>
            <th>by you</th>
          </tr>
        </thead>
        <tbody>
          {differ.map((column) => (
            <tr key={column}>
              <th scope="row">{column}</th>
              <td>{cell(found, column, 'row is gone')}</td>
              <td>{cell(change.after, column, 'withdrawn')}</td>
            </tr>
          ))}
        </tbody>
      </table>
    </>
  );
}

function cell(cells: Cells | undefined, column: string, none: string): string {
  return cells ? (cells[column] ?? '') : none;
}
