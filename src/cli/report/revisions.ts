import type { ClaimChange, Difference, Revision } from '../../chronicle/index.ts';
import { tableOf } from './table.ts';
import { counted } from './words.ts';

/** The revisions of a dossier, newest first. */
export function revisionsReport(revisions: readonly Revision[], width: number): string {
  if (revisions.length === 0) return 'No revision is frozen yet; --freeze freezes one.\n';
  const rows = [...revisions]
    .reverse()
    .map(({ number, day, figures, claims, sha512 }) => [
      `${number}`,
      day,
      `${figures.length}`,
      `${claims.length}`,
      `${sha512.slice(0, 12)}…`,
    ]);
  const columns = [
    { head: 'revision', align: 'right' },
    { head: 'day' },
    { head: 'figures', align: 'right' },
    { head: 'claims', align: 'right' },
    { head: 'SHA-512' },
  ] as const;
  return tableOf(columns, rows, width);
}

const HEADS: readonly (readonly [ClaimChange['what'], string])[] = [
  ['new', 'New evidence'],
  ['withdrawn', 'Evidence withdrawn'],
  ['misread', 'Misread before'],
  ['slip', 'Found to be a source’s slip'],
  ['no-slip', 'No longer taken for a slip'],
  ['place', 'Place mended'],
];

/** What changed between two revisions: claims by what became of them, then figures with the reason. */
export function differenceReport(difference: Difference, width: number): readonly string[] {
  const { from, to, files, claims, figures } = difference;
  const title = `Revision ${from} → ${to ?? 'the dossier as it stands'}\n`;
  if (files.length === 0 && figures.length === 0) return [title, 'Nothing changed.\n'];
  const kinds = HEADS.flatMap(([what, head]) => {
    const rows = claims.filter((claim) => claim.what === what).map(claimRow);
    return rows.length === 0
      ? []
      : [`\n${head}: ${counted(rows.length, 'claim')}\n`, claimTable(rows, width)];
  });
  const moved = figures.flatMap(({ name, moved: how, because }) => [[name, how], `${because}.`]);
  const table = tableOf([{ head: 'figure' }, { head: 'moved' }], moved, width);
  return [
    title,
    `Files that changed: ${files.join(', ') || 'none'}\n`,
    ...kinds,
    `\nFigures: ${counted(figures.length, 'change')}\n`,
    ...(figures.length === 0 ? [] : [table]),
  ];
}

function claimRow({ before, after }: ClaimChange): string[] {
  const one = after ?? before;
  const value =
    before && after && before.value !== after.value
      ? `${before.value} → ${after.value}`
      : one?.value;
  return [
    one?.source ?? '',
    one?.property ?? '',
    one?.about ?? '',
    value ?? '',
    one?.locator ?? '',
  ];
}

function claimTable(rows: readonly string[][], width: number): string {
  const heads = ['source', 'property', 'about', 'value', 'locator'];
  return tableOf(
    heads.map((head) => ({ head })),
    rows,
    width,
  );
}
