import type { DocumentWords } from './types.ts';

/** The document in English. */
export const ENGLISH_DOCUMENT: DocumentWords = {
  subtitle: 'Every printing that is known, when it came out, and how sure that is',
  contents: 'Contents',
  printings: 'The printings',
  cautions: 'Cautions',
  certainty: 'Words for how sure a statement is, by its probability',
  atLeast: (p) => `${p} and more`,
  less: (p) => `less than ${p}`,
  checklist: (title) => `${title}: checklist`,
  checklistNote: 'Every printing that is known, the earliest first',
  key: (title) => `Key to ${title}`,
  keyNote:
    'Begin at 1, look, and follow the number. Every look is taken for right; a copy that fits nowhere is of none of these. A key gives no verdict on a copy.',
  keyEffort: (looks) => `A copy takes ${looks} looks on average.`,
  keyLeftOut: (share) => `${share} of copies go a way that is too rare for this page.`,
  keyAlike: (groups) => `No published trait tells apart: ${groups}.`,
  kindOf: (kind, printing) => `${kind} of ${printing}`,
};
