import { describe, expect, it } from 'vitest';
import { EMPTY, keepingStep, plainListing, wrongListing } from './draft.ts';

const draft = { ...EMPTY, words: ' Lebre nº 31 ', price: '540,00', currency: 'brl' };

describe('a listing as it is typed', () => {
  it('says what is wrong with it', () => {
    expect(wrongListing(EMPTY)).toMatch(/words/);
    expect(wrongListing({ ...draft, price: 'much' })).toMatch(/price/);
    expect(wrongListing({ ...draft, currency: 'R$' })).toMatch(/currency/);
    expect(wrongListing({ ...draft, shipping: '-3' })).toMatch(/Shipping/);
    expect(wrongListing({ ...draft, origin: 'Brazil' })).toMatch(/country/);
    expect(wrongListing(draft)).toBe('');
  });

  it('is sent with a point and in capitals', () => {
    expect(plainListing(draft)).toMatchObject({
      ...{ words: 'Lebre nº 31', price: '540.00', currency: 'BRL' },
    });
  });

  it('is kept as an offered copy, with a parcel only where something of it is told', () => {
    const [copy, ...none] = keepingStep(draft, 'copy-1', 'br-foil').changes;
    expect(copy?.after).toMatchObject({ id: 'copy-1', status: 'offered', parcel: '' });
    expect(none).toEqual([]);
    const [, parcel] = keepingStep(
      { ...draft, origin: 'br', shipping: '60' },
      'copy-1',
      '',
    ).changes;
    expect(parcel?.after).toEqual({
      ...{ id: 'copy-1-parcel', origin: 'BR', shipped_by: '', shipping: '60', currency: 'BRL' },
    });
  });
});
