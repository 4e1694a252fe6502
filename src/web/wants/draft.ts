import type { Wanted, WireChange } from '../../contract/index.ts';
import type { Step } from '../wire/index.ts';

/** What is asked of something wanted; all but the printing may be empty. */
export interface WantDraft {
  readonly printing: string;
  readonly service: string;
  readonly grade: string;
  readonly max_price: string;
  readonly currency: string;
  readonly note: string;
}

const FILE = 'desk/wants.csv';

/** A draft of what stands in a row, or an empty one. */
export function draftOf(want: Wanted | undefined, currency: string): WantDraft {
  const cell = (column: string) => want?.cells[column] ?? '';
  return {
    ...{ printing: cell('printing'), service: cell('service'), grade: cell('grade') },
    ...{ max_price: cell('max_price'), currency: cell('currency') || currency, note: cell('note') },
  };
}

/** What is wrong with a draft, in a sentence; empty where nothing is. */
export function wrongWant({ printing, service, grade, max_price, currency }: WantDraft): string {
  if (printing === '') return 'Choose the printing.';
  if (grade.trim() !== '' && service.trim() === '') return 'Say at which service the grade is.';
  if (max_price.trim() === '') return '';
  if (!/^\d+([.,]\d+)?$/.test(max_price.trim()))
    return 'The most that you would pay is a number such as 120.';
  return /^[A-Za-z]{3}$/.test(currency.trim()) ? '' : 'The currency is three letters such as EUR.';
}

/** The step that adds a want, or changes one. */
export function wantStep(draft: WantDraft, want: Wanted | undefined, called: string): Step {
  const max_price = draft.max_price.trim().replace(',', '.');
  const after = {
    ...want?.cells,
    ...{ printing: draft.printing, service: draft.service.trim(), grade: draft.grade.trim() },
    ...{ max_price, note: draft.note.trim() },
    currency: max_price === '' ? '' : draft.currency.trim().toUpperCase(),
  };
  const change: WireChange = want
    ? { file: FILE, op: 'replace', row: want.row, before: want.cells, after }
    : { file: FILE, op: 'add', after };
  return { label: `${want ? 'Change the want' : 'Want'} ${called}`, changes: [change] };
}

/** The step that takes a want off the list. */
export function noWantStep({ row, cells }: Wanted, called: string): Step {
  return {
    label: `Want ${called} no more`,
    changes: [{ file: FILE, op: 'remove', row, before: cells }],
  };
}
