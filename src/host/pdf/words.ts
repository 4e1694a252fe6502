import type { Paper } from '../../chronicle/index.ts';

/** All text of a paper, its drawings' markup too. */
export function textIn(paper: Paper): string {
  const texts: string[] = [];
  replaced(paper, (text) => {
    texts.push(text);
    return text;
  });
  return texts.join('');
}

/**
 * The paper with letters that no font has written as their code points (`[U+1F407]`), and without
 * controls such as marks of direction.
 */
export function withoutLetters(paper: Paper, missing: string): Paper {
  const gone = new Set(missing);
  const code = (letter: string) =>
    `[U+${(letter.codePointAt(0) as number).toString(16).toUpperCase().padStart(4, '0')}]`;
  return replaced(paper, (text) =>
    [...text.replace(/[^\P{C}\n]/gu, '')]
      .map((letter) => (gone.has(letter) ? code(letter) : letter))
      .join(''),
  );
}

function replaced<T>(value: T, change: (text: string) => string): T {
  if (typeof value === 'string') return change(value) as T;
  if (Array.isArray(value)) return value.map((one) => replaced(one, change)) as T;
  if (typeof value !== 'object' || value === null) return value;
  const entries = Object.entries(value).map(([key, one]) => [key, replaced(one, change)]);
  return Object.fromEntries(entries) as T;
}
