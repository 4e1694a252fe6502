import { createContext, useContext } from 'react';
import type { Addable } from '../add/rows.ts';
import type { Book } from '../view/index.ts';
import type { Step } from '../wire/index.ts';

/** What every screen may do. */
export interface Desk {
  readonly book: Book;
  /** Says a sentence aloud, and shows it for a while at the foot of the page. */
  readonly say: (sentence: string) => void;
  readonly change: (step: Step) => void;
  readonly undo: () => void;
  readonly redo: () => void;
  readonly palette: () => void;
  readonly keys: () => void;
  /** Opens the form for a new printing or product. */
  readonly add: (what: Addable) => void;
}

export const DeskContext = createContext<Desk | undefined>(undefined);

/** The desk of the page. Throws an `Error` outside of it. */
export function useDesk(): Desk {
  const desk = useContext(DeskContext);
  if (!desk) throw new Error('useDesk requires a DeskContext above it');
  return desk;
}

/** Dossier and dating as they are shown now. */
export function useBook(): Book {
  return useDesk().book;
}
