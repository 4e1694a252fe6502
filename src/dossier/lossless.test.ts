import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { decodeLossless, encodeLossless, isDamaged, readable } from './lossless.ts';

describe('decodeLossless', () => {
  it('loses no byte', () => {
    fc.assert(
      fc.property(fc.uint8Array({ maxLength: 200 }), (bytes) => {
        expect(encodeLossless(decodeLossless(bytes))).toEqual(bytes);
      }),
    );
  });

  it('loses no letter, nor calls good text damaged', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'grapheme' }), (text) => {
        expect(decodeLossless(encodeLossless(text))).toBe(text);
        expect(isDamaged(text)).toBe(false);
      }),
    );
  });

  it('agrees with the decoder of the platform on what is valid', () => {
    const bytes = fc.array(fc.constantFrom(0x41, 0x80, 0xa0, 0xbf, 0xc2, 0xe0, 0xed, 0xf0, 0xf4));
    fc.assert(
      fc.property(bytes, (list) => {
        const sample = Uint8Array.from(list);
        const lossy = new TextDecoder().decode(sample);
        expect(isDamaged(decodeLossless(sample))).toBe(lossy.includes('\ufffd'));
      }),
    );
  });

  it('shows stray bytes', () => {
    expect(readable(decodeLossless(Uint8Array.of(0x63, 0xe9, 0x2c)))).toBe('c\\xE9,');
  });
});
