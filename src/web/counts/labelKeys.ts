import type { KeyboardEvent } from 'react';
import { singleKeys } from '../app/shortcuts.ts';
import { type Candidate, type Word, wordWithout } from './words.ts';

interface Work {
  readonly candidates: readonly Candidate[];
  readonly say: (word: Word) => void;
  readonly tick: (printing: string) => void;
  readonly split: () => void;
}

/** Keys within a label: arrows move, Enter confirms, Delete rejects, Space ticks, s splits, n none. */
export function labelKeys({ candidates, say, tick, split }: Work) {
  return (event: KeyboardEvent<HTMLElement>) => {
    if (event.ctrlKey || event.metaKey || event.altKey) return;
    const rows = [...event.currentTarget.querySelectorAll<HTMLElement>('.candidate')];
    const here = rows.findIndex((row) => row.contains(event.target as Node));
    const row = event.target === rows[here] ? (rows[here]?.dataset.printing ?? '') : '';
    if (event.key === 'ArrowDown') rows[Math.min(rows.length - 1, here + 1)]?.focus();
    else if (event.key === 'ArrowUp') rows[Math.max(0, here - 1)]?.focus();
    else if (row && event.key === 'Enter') say([row]);
    else if (row && event.key === 'Delete') say(wordWithout(candidates, row));
    else if (row && event.key === ' ') tick(row);
    else if (singleKeys() && event.key === 's') split();
    else if (singleKeys() && event.key === 'n') say('none');
    else return;
    event.preventDefault();
  };
}
