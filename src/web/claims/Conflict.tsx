import { Dialog, Heading, Modal, ModalOverlay } from 'react-aria-components';
import type { Cells, WireConflict } from '../../contract/index.ts';

interface Props {
  /** Names the step that met an edit. */
  readonly label: string;
  readonly conflicts: readonly WireConflict[];
  readonly mine: () => void;
  readonly theirs: () => void;
}

/** Both sides changed one row: shows them, and asks. */
export default function Conflict({ label, conflicts, mine, theirs }: Props) {
  return (
    <ModalOverlay isOpen onOpenChange={(open) => (open ? undefined : theirs())} className="overlay">
      <Modal className="modal">
        <Dialog>
          <Heading slot="title">The file was edited meanwhile</Heading>
          <p>{label}: not written yet. Which shall stand?</p>
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
