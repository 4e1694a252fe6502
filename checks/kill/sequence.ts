import type { Change } from '../../src/dossier/index.ts';

/** Every fifth step takes the one before it back. */
export function isUndo(step: number): boolean {
  return step % 5 === 4;
}

/** A step adds a source and a claim of it, in two files at once. */
export function changesOf(round: string, step: number): readonly Change[] {
  const id = `s${round}-${step}`;
  return [
    { file: 'sources.csv', op: 'add', after: { id, kind: 'forum' } },
    {
      file: 'claims.csv',
      op: 'add',
      after: { printing: 'pt-first', source: id, property: 'on-sale', value: '1996-05-03' },
    },
  ];
}

/** Ids of the sources that there are after the first `steps` steps of a round. */
export function idsAfter(round: string, steps: number): readonly string[] {
  const ids: string[] = [];
  for (let step = 0; step < steps; step++) {
    if (isUndo(step)) ids.pop();
    else ids.push(`s${round}-${step}`);
  }
  return ids;
}

/** The two files as they are with these sources, to the byte. */
export function filesWith(ids: readonly string[]): Readonly<Record<string, string>> {
  return {
    'sources.csv': `id,kind\n${ids.map((id) => `${id},forum\n`).join('')}`,
    'claims.csv': `printing,source,property,value\n${ids
      .map((id) => `pt-first,${id},on-sale,1996-05-03\n`)
      .join('')}`,
  };
}
