import { describe, expect, it } from 'vitest';
import { found, type Thing } from './things.ts';

const THINGS: readonly Thing[] = [
  { id: 'go:/', words: 'Chronology', kind: 'screen' },
  { id: 'go:/printings/pl-box', words: 'Polish, Pudełko, foil', kind: 'printing' },
  { id: 'go:/printings/br-box', words: 'Portuguese, Caixa Verão, foil', kind: 'printing' },
];

describe('the palette', () => {
  it('finds by every word typed, without accents, in any order', () => {
    expect(found(THINGS, 'foil verao').map(({ id }) => id)).toEqual(['go:/printings/br-box']);
    expect(found(THINGS, 'printing FOIL')).toHaveLength(2);
    expect(found(THINGS, '')).toHaveLength(3);
    expect(found(THINGS, 'foil', 1)).toHaveLength(1);
  });
});
