const PLAIN: Readonly<Record<string, string>> = {
  ł: 'l',
  ø: 'o',
  đ: 'd',
  ß: 'ss',
  æ: 'ae',
  œ: 'oe',
  ı: 'i',
};

/** A text in small letters, width and accents of Latin letters levelled, so that words compare. */
export function levelled(text: string): string {
  const apart = text.normalize('NFKC').toLowerCase().normalize('NFD');
  const bare = apart.replace(/[\u0300-\u036f]/g, '').replace(/[łøđßæœı]/g, (c) => PLAIN[c] ?? c);
  return bare.normalize('NFC');
}

/** The words of a text, levelled: runs of letters and digits. */
export function wordsOf(text: string): string[] {
  return levelled(text).match(/[\p{L}\p{N}]+/gu) ?? [];
}

/** A number of a card as labels write it in many ways: no signs, no zeros in front of its digits. */
export function bareNumber(text: string): string {
  return wordsOf(text)
    .join('')
    .replace(/(?<!\d)0+(?=\d)/g, '');
}
