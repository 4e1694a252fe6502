export { readNotes } from './read-notes.ts';
export type { NoteClaim, NoteLine, NotesContext, NotesReading, PrintingWords } from './types.ts';
export { FINISHES } from './words/printing-words.ts';
