import type { WireLabelled } from '../../contract/index.ts';
import { useBook, useDesk } from '../app/context.ts';
import { shortName } from '../view/index.ts';
import { askLabelRows } from '../wire/index.ts';
import { type Word, wordChanges } from './words.ts';

/** Writes a word on a label into its rows, as one step that can be undone. */
export function useWord({ service, label }: WireLabelled): (word: Word) => void {
  const book = useBook();
  const { change, say } = useDesk();
  return (word) => {
    askLabelRows(service, label)
      .then((rows) => {
        const changes = wordChanges(rows, word);
        if (changes.length > 0) change({ label: stepName(label, word, nameOf), changes });
      })
      .catch((error: Error) => say(error.message));
  };
  function nameOf(id: string): string {
    return shortName(book, id);
  }
}

function stepName(label: string, word: Word, name: (id: string) => string): string {
  const quoted = `“${label.length > 60 ? `${label.slice(0, 60)}…` : label}”`;
  if (word === 'nothing') return `Take back the word on ${quoted}`;
  if (word === 'none') return `${quoted} is none of the printings`;
  return `${quoted} is ${word.map(name).join(' and ')}`.slice(0, 300);
}
