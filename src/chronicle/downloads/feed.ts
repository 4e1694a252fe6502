import type { ClaimChange, ToldChange, ToldRevision } from '../revisions/types.ts';

const SPACE = ' xmlns="http://www.w3.org/2005/Atom"';

/**
 * The revisions of an account as an Atom feed (`nottingham:2005`), newest first, each with what
 * changed. Names of feed and entries come of the hashes, so they last wherever it is published.
 * Empty where no revision is frozen.
 */
export function feedOf(title: string, history: readonly ToldRevision[]): string {
  const frozen = history.filter(({ number }) => number !== null);
  const [last] = frozen;
  const first = frozen.at(-1);
  if (first === undefined || last === undefined) return '';
  return [
    '<?xml version="1.0" encoding="utf-8"?>',
    `<feed${SPACE}>`,
    ...headOf(title, uuid(first.sha512.slice(32), 0), last.day),
    `<author><name>The keeper of “${escaped(title)}”</name></author>`,
    `<generator>${escaped(last.madeWith)}</generator>`,
    ...frozen.map((revision) => entryOf(title, revision)),
    '</feed>\n',
  ].join('\n');
}

function entryOf(title: string, { number, day, sha512, change }: ToldRevision): string {
  return [
    '<entry>',
    ...headOf(`${title}, revision ${number}`, uuid(sha512, number ?? 0), day),
    `<content type="text">${escaped(wordsOf(change))}</content>`,
    '</entry>',
  ].join('\n');
}

function headOf(title: string, id: string, day: string): string[] {
  return [
    `<title>${escaped(title)}</title>`,
    `<id>urn:uuid:${id}</id>`,
    `<updated>${day}T00:00:00Z</updated>`,
  ];
}

function wordsOf(change: ToldChange | null): string {
  if (change === null) return 'The first revision.';
  const told = change.claims.map((claim) => `${SAYS[claim.what]}: ${sayClaim(claim)}`);
  const moved = change.figures.map(
    ({ name, moved: how, because }) => `${name}: ${how} (${because})`,
  );
  return [...told, ...moved].join('\n') || 'Nothing that is shown changed.';
}

const SAYS: Readonly<Record<ClaimChange['what'], string>> = {
  new: 'New evidence',
  withdrawn: 'Evidence withdrawn',
  misread: 'Misread before',
  place: 'Place mended',
  slip: 'Found to be a source’s slip',
  'no-slip': 'No longer taken for a slip',
};

function sayClaim({ before, after }: ClaimChange): string {
  const one = (after ?? before)!;
  const values = [...new Set([before?.value, after?.value].filter((value) => value !== undefined))];
  return `${one.source}, ${one.property} of ${one.about}, ${values.join(' → ')}`;
}

/** A UUID of version 8 (RFC 9562, 5.8): 104 bits of a hash, and a number at the end. */
function uuid(hash: string, number: number): string {
  const end = hash.slice(20, 28) + number.toString(16).padStart(4, '0').slice(-4);
  return `${hash.slice(0, 8)}-${hash.slice(8, 12)}-8${hash.slice(13, 16)}-8${hash.slice(17, 20)}-${end}`;
}

/** XML's own signs by reference, and signs that XML 1.0 has no place for left out. */
function escaped(text: string): string {
  return text
    .replaceAll(/[^\t\n\r\u0020-\ud7ff\ue000-\ufffd\u{10000}-\u{10ffff}]/gu, '')
    .replaceAll('&', '&amp;')
    .replaceAll('<', '&lt;')
    .replaceAll('>', '&gt;');
}
