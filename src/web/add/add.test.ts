import { describe, expect, it } from 'vitest';
import type { DossierAnswer } from '../../contract/index.ts';
import { patched } from '../wire/patch.ts';
import { addingStep, knownIn, suggestedId, wrongIn } from './rows.ts';

const row = (at: number, cells: Record<string, string>) => ({ id: cells.id ?? '', row: at, cells });
const dossier = {
  printings: [
    row(2, { id: 'ko-road-box-rb-5-foil', subject: 'lark', finish: 'foil' }),
    row(4, { id: 'fi-tin', subject: 'lark', finish: 'matte' }),
  ],
  otherIds: ['ko-road'],
  products: [row(2, { id: 'road-box', title: 'Road Box' })],
  claims: [],
  sources: [],
} as unknown as DossierAnswer;

describe('a row added by hand', () => {
  const cells = { language: 'ko', product: 'road-box', number: 'RB-5', finish: 'foil' };

  it('gets an id of what tells it from others, never one in use or given up', () => {
    expect(suggestedId('printing', cells, dossier)).toBe('ko-road-box-rb-5-foil-2');
    expect(suggestedId('printing', { ...cells, number: 'none', wave: '2' }, dossier)).toBe(
      'ko-road-box-foil-wave-2',
    );
    expect(suggestedId('printing', { language: 'ko', product: 'Road' }, dossier)).toBe('ko-road-2');
    expect(suggestedId('product', { title: 'Road Box' }, dossier)).toBe('road-box-2');
    expect(suggestedId('printing', { number: ' ' }, dossier)).toBe('');
  });

  it('says what is wrong with it', () => {
    const wrong = (more: Record<string, string>, id = 'a') =>
      wrongIn('printing', { ...cells, ...more }, id, dossier);
    expect(wrongIn('printing', { finish: ' ' }, 'a', dossier)).toBe(
      'Say something of the printing.',
    );
    expect(wrong({ language: 'Korean!' })).toMatch(/^A language is its tag/);
    expect(wrong({}, 'Road')).toMatch(/^An id is made of/);
    expect(wrong({}, 'ko-road')).toBe('The id ko-road is taken.');
    expect(wrong({})).toBe('');
    expect(wrongIn('product', { title: 'Tin', list_price: '4.50' }, 'tin', dossier)).toBe(
      'Say in which currency the price is.',
    );
  });

  it('is of the subject of the others, names itself, and leaves out what is empty', () => {
    const step = addingStep(
      'printing',
      { ...cells, edition: ' ', number: ' RB-5 ' },
      'new',
      dossier,
    );
    expect(step).toEqual({
      label: 'Add the printing Korean, Road Box, RB-5, foil',
      changes: [
        { file: 'printings.csv', op: 'add', after: { id: 'new', subject: 'lark', ...cells } },
      ],
    });
    const shown = patched(dossier, step.changes);
    expect(shown.printings.at(-1)).toMatchObject({ id: 'new', row: 5, cells });
    expect(knownIn('printing', 'finish', dossier)).toEqual(['foil', 'matte']);
  });
});
