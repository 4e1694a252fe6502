import type { Cells, ClaimRow, DossierAnswer, WireChange } from '../../contract/index.ts';
import type { Step } from '../wire/index.ts';
import { idOf } from '../words/index.ts';

/** What the form holds; `source` is an id, or the title of a source that is not there yet. */
export interface ClaimDraft {
  readonly printings: readonly string[];
  readonly product: string;
  readonly source: string;
  /** Kind of a source that is not there yet. */
  readonly kind: string;
  readonly property: string;
  readonly value: string;
  readonly locator: string;
  readonly quote: string;
  readonly note: string;
}

/** An empty form for a printing, or one filled from a claim. */
export function draftOf(claim: ClaimRow | undefined, printing: string): ClaimDraft {
  return {
    printings: claim ? claim.printings : printing ? [printing] : [],
    product: claim?.product ?? '',
    source: claim?.source ?? '',
    kind: 'other',
    property: claim?.property ?? 'on-sale',
    value: claim?.value ?? '',
    locator: claim?.cells.locator ?? '',
    quote: claim?.cells.quote ?? '',
    note: claim?.cells.note ?? '',
  };
}

/** What is still missing in a form, in a sentence; empty where nothing is. */
export function missing(draft: ClaimDraft): string {
  if (draft.source.trim() === '') return 'Say who states it.';
  if (draft.value.trim() === '') return 'Say what it states.';
  if (draft.printings.length === 0 && draft.product === '') return 'Say of which printing.';
  return '';
}

function cellsOf(draft: ClaimDraft, source: string, before: Cells): Cells {
  return {
    ...before,
    printing: draft.printings.join('|'),
    product: draft.printings.length > 0 ? (before.product ?? '') : draft.product,
    source,
    property: draft.property,
    value: draft.value.trim(),
    locator: draft.locator.trim(),
    quote: draft.quote.trim(),
    note: draft.note.trim(),
  };
}

interface SourceOf {
  readonly id: string;
  readonly title: string;
  readonly changes: readonly WireChange[];
}

function sourceOf(draft: ClaimDraft, { sources }: DossierAnswer): SourceOf {
  const words = draft.source.trim();
  const known = sources.find(({ id, cells }) => id === words || cells.title === words);
  if (known) return { id: known.id, title: known.cells.title || known.id, changes: [] };
  const id = idOf(words, new Set(sources.map((source) => source.id)));
  const after = { id, title: words, kind: draft.kind };
  return { id, title: words, changes: [{ file: 'sources.csv', op: 'add', after }] };
}

/** The step that adds a claim, and its source where that is new. */
export function addition(draft: ClaimDraft, dossier: DossierAnswer): Step {
  const source = sourceOf(draft, dossier);
  const after = cellsOf(draft, source.id, {});
  return {
    label: `Add a claim of ${source.title}`,
    changes: [...source.changes, { file: 'claims.csv', op: 'add', after }],
  };
}

/** The step that puts a changed claim in the place of the old one. */
export function replacement(draft: ClaimDraft, claim: ClaimRow, dossier: DossierAnswer): Step {
  const source = sourceOf(draft, dossier);
  const after = cellsOf(draft, source.id, claim.cells);
  const replace: WireChange = {
    file: 'claims.csv',
    op: 'replace',
    row: claim.row,
    before: claim.cells,
    after,
  };
  return { label: `Change a claim of ${source.title}`, changes: [...source.changes, replace] };
}

/** The step that withdraws a claim. */
export function withdraw(claim: ClaimRow, sourceTitle: string): Step {
  return {
    label: `Withdraw a claim of ${sourceTitle}`,
    changes: [{ file: 'claims.csv', op: 'remove', row: claim.row, before: claim.cells }],
  };
}
