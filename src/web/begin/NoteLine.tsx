import { type Draft, type DraftLine, withClaim, withLine } from './draft.ts';
import { NoteClaim } from './NoteClaim.tsx';
import { printingWords } from './PrintingTable.tsx';

interface Props {
  readonly line: DraftLine;
  readonly draft: Draft;
  readonly set: (draft: Draft) => void;
}

/** One line of the notes in its own words, and beneath it how it was read. */
export function NoteLine({ line, draft, set }: Props) {
  const says = line.claims.length > 0 || line.printing >= 0;
  return (
    <li className={says ? 'note-line' : 'note-line silent'} value={line.line}>
      <p className="words">{line.text || ' '}</p>
      {says ? (
        <div className="made">
          <label className="field inline">
            <span>of</span>
            <select
              value={line.printing}
              onChange={(event) =>
                set(
                  withLine(draft, line.line, {
                    printing: Number(event.target.value),
                    carried: false,
                  }),
                )
              }
            >
              <option value={-1}>no printing: leave the line out</option>
              {draft.printings.map((cells, at) => (
                // biome-ignore lint/suspicious/noArrayIndexKey: a printing is its place in the list
                <option key={at} value={at}>
                  {printingWords(cells, at)}
                </option>
              ))}
            </select>
            {line.carried ? <span className="doubt">taken from the lines above</span> : null}
          </label>
          {line.claims.map((claim, at) => (
            <NoteClaim
              // biome-ignore lint/suspicious/noArrayIndexKey: a claim is its place in the line
              key={at}
              claim={claim}
              name={`line${line.line}-${at}`}
              set={(part) => set(withClaim(draft, line.line, at, part))}
            />
          ))}
        </div>
      ) : null}
      {line.leftOver ? <p className="detail">not read: {line.leftOver}</p> : null}
    </li>
  );
}
