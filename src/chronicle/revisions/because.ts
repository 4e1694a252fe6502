import type { Cause } from './types.ts';

/** Why a figure moved, in English. */
export function because(cause: Cause): string {
  switch (cause.is) {
    case 'claims':
      return [
        told(cause.added, 'source', 'added'),
        told(cause.withdrawn, 'source', 'withdrawn'),
        told(cause.misread, 'claim', 'read anew'),
      ]
        .filter((part) => part !== '')
        .join('; ');
    case 'method':
      return 'only the method changed: the dossier is the same';
    case 'files':
      return `${cause.files.join(', ')} changed`;
    case 'judged':
      return 'no claim that it rests on changed; others did, by which its sources are judged';
  }
}

const NUMBERS = ' one two three four five six seven eight nine ten'.split(' ');

function told(n: number, one: string, what: string): string {
  return n === 0 ? '' : `${NUMBERS[n] ?? n} ${n === 1 ? one : `${one}s`} ${what}`;
}
