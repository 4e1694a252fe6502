import type { ReactNode } from 'react';

interface Props {
  /** Plain words on where the number comes from, shown when it is touched. */
  readonly why: string;
  readonly children: ReactNode;
  /** Inside a lane the row is the stop of the Tab key, not each number. */
  readonly quiet?: boolean;
}

/** A number that explains itself when it is pointed at, tapped or reached by keyboard. */
export function Num({ why, children, quiet = false }: Props) {
  return (
    <button type="button" className="num" data-why={why} tabIndex={quiet ? -1 : 0}>
      {children}
    </button>
  );
}
