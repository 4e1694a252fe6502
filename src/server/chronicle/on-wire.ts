import {
  compareRevisions,
  fileNameOf,
  LACKS,
  type Missing,
  missingIn,
  type Revision,
} from '../../chronicle/index.ts';
import type {
  ChronicleAnswer,
  PreviewAnswer,
  ProofAnswer,
  RevisionsAnswer,
  WireLack,
  WireRevision,
} from '../../contract/index.ts';
import {
  accountGroundIn,
  type Dossier,
  leavingGroundIn,
  readRevisions,
  storyFaultsIn,
} from '../../dossier/index.ts';
import { dayFrom } from '../../evidence/index.ts';
import { filesOf } from '../../host/index.ts';
import type { Shown } from '../session.ts';
import type { Proof } from './previewing.ts';

/** What the account of a dossier lacks on a day, kind by kind. */
export function missingOnWire(dossier: Dossier, today: string): ChronicleAnswer['missing'] {
  const missing = missingIn({
    account: accountGroundIn(dossier, null),
    tables: leavingGroundIn(dossier, []).tables,
    links: storyFaultsIn(dossier),
    today: dayFrom(today),
  });
  const kinds = Object.entries(LACKS).map(([lack, { head, why }]): WireLack => {
    const entries = missing.filter((one) => one.lack === lack);
    return { lack, head, why, entries: entries.map((one) => entryOf(one, dossier)) };
  });
  return kinds.filter(({ entries }) => entries.length > 0);
}

function entryOf({ lack, ...entry }: Missing, dossier: Dossier): WireLack['entries'][number] {
  const { row, column, file } = entry;
  const table = row === null || column === null ? undefined : dossier.tables.get(file);
  return { ...entry, cells: table && row !== null ? table.record(row) : null };
}

/** The frozen revisions of a dossier, newest first, each with what changed since the one before. */
export async function revisionsOnWire({ version, opened }: Shown): Promise<RevisionsAnswer> {
  const { revisions, faults } = await readRevisions(await filesOf(opened.folder));
  const told = revisions.map((one, at) => revisionOnWire(one, revisions[at - 1]));
  return { version, revisions: told.reverse(), faults: faults.map(({ message }) => message) };
}

function revisionOnWire(revision: Revision, before: Revision | undefined): WireRevision {
  const { number, day, sha512, claims, figures } = revision;
  const head = { number, day, sha512, claims: claims.length, figures: figures.length };
  if (before === undefined) return { ...head, changed: null };
  const difference = compareRevisions(before, revision);
  const counts = new Map<string, number>();
  for (const { what } of difference.claims) counts.set(what, (counts.get(what) ?? 0) + 1);
  return {
    ...head,
    changed: {
      claims: [...counts].map(([what, count]) => ({ what, count })),
      figures: difference.figures.map(({ name, moved, because }) => ({ name, moved, because })),
    },
  };
}

/** Where the pages of a proof stand, and which of them is whose. */
export function previewOnWire(
  { version, key, files, left }: Proof,
  { evidence }: Dossier,
): PreviewAnswer {
  const printings = new Map(
    evidence.printings.map(({ id }) => [`printings/${fileNameOf(id)}.html`, id]),
  );
  const names = [...files.keys()].filter((name) => /^[a-z]{2}\/.*\.html$/.test(name));
  const languages = [...new Set(names.map((name) => name.slice(0, 2)))];
  const [first = 'en'] = languages;
  const pages = names
    .filter((name) => name.startsWith(`${first}/`))
    .map((name) => name.slice(first.length + 1))
    .map((path) => ({ path, printing: printings.get(path) ?? null }));
  const tongues = languages as PreviewAnswer['languages'];
  return { version, root: rootOf(key), languages: tongues, pages, left: [...left] };
}

/** Where the files of a proof stand, and which there are. */
export function filesOnWire({ version, key, files, left }: Proof): ProofAnswer {
  return { version, root: rootOf(key), files: [...files.keys()], left: [...left] };
}

/** The address under which the files of a proof stand. */
function rootOf(key: string): string {
  return `/preview/${key}/`;
}
