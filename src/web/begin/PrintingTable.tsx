import { nameOf } from '../../catalogue/index.ts';
import type { Cells } from '../../contract/index.ts';
import { type Draft, withPrinting } from './draft.ts';

const COLUMNS = ['language', 'market', 'product', 'number', 'finish', 'edition', 'wave'] as const;

/** A printing of the draft in words, with its number in the list. */
export function printingWords(cells: Cells, at: number): string {
  const { title, detail } = nameOf({ id: '', cells });
  return `${at + 1}: ${[title, detail].filter(Boolean).join(', ') || 'nothing known of it yet'}`;
}

interface Props {
  readonly draft: Draft;
  readonly set: (draft: Draft) => void;
}

/** The printings that the lines speak of, to be made whole by hand. */
export function PrintingTable({ draft, set }: Props) {
  const next = draft.printings.length;
  return (
    <section>
      <h2>Printings in these notes</h2>
      <p className="detail">
        A language as its tag (en, ko, pt-BR), a market as its code (GB, KR) or a plain word. Leave
        empty what you do not know; write none where it has none.
      </p>
      <div className="wide">
        <table className="list edit">
          <thead>
            <tr>
              <th scope="col">#</th>
              {COLUMNS.map((column) => (
                <th key={column} scope="col">
                  {column}
                </th>
              ))}
            </tr>
          </thead>
          <tbody>
            {draft.printings.map((cells, at) => (
              // biome-ignore lint/suspicious/noArrayIndexKey: a printing is its place in the list
              <tr key={at}>
                <th scope="row">{at + 1}</th>
                {COLUMNS.map((column) => (
                  <td key={column}>
                    <input
                      aria-label={`${column} of printing ${at + 1}`}
                      value={cells[column] ?? ''}
                      onChange={(event) =>
                        set(withPrinting(draft, at, { [column]: event.target.value }))
                      }
                    />
                  </td>
                ))}
              </tr>
            ))}
          </tbody>
        </table>
      </div>
      <button type="button" className="choice" onClick={() => set(withPrinting(draft, next, {}))}>
        Another printing
      </button>
    </section>
  );
}
