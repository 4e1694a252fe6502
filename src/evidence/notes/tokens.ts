/** The smallest piece of a note: a word, a run of digits, one East Asian sign, one other sign. */
export interface Token {
  readonly kind: 'word' | 'num' | 'cjk' | 'sym' | 'link';
  readonly text: string;
  /** Lower case without accents, so that `Août` and `aout` are one word. */
  readonly norm: string;
  readonly start: number;
  readonly end: number;
  /** The first three letters of `norm`. */
  readonly stem: string;
  /** White space stands before it. */
  readonly gap: boolean;
  /** From 0, counted in line ends within the text. */
  readonly line: number;
}

const PIECE =
  /(?<link>(?:https?:\/\/|www\.)\S{1,2000}|[\w.+-]{1,64}@[\w-]{1,64}(?:\.[\w-]{1,64}){1,4})|(?<num>\p{Nd}+)|(?<cjk>[\p{Script=Han}\p{Script=Hiragana}\p{Script=Katakana}\p{Script=Hangul}ー])|(?<word>[\p{L}\p{M}]+?(?=[\p{Script=Han}\p{Script=Hiragana}\p{Script=Katakana}\p{Script=Hangul}]|[^\p{L}\p{M}]|$))|(?<space>\s+)|(?<sym>.)/gsu;

const LETTERS: Readonly<Record<string, string>> = {
  ß: 'ss',
  ł: 'l',
  ø: 'oe',
  æ: 'ae',
  œ: 'oe',
  đ: 'd',
  ı: 'i',
  ð: 'd',
  þ: 'th',
};

/** A word in lower case without accents. */
export function plain(text: string): string {
  if (/^[\x20-\x7e]*$/.test(text)) return text.toLowerCase();
  const bare = text
    .normalize('NFKD')
    .toLowerCase()
    .replace(/[\u0300-\u036f]/gu, '')
    .normalize('NFC');
  return bare.replace(/[ßłøæœđıðþ]/gu, (letter) => LETTERS[letter] ?? letter);
}

function normOf(kind: Token['kind'], text: string): string {
  if (kind === 'cjk') return text.normalize('NFKC');
  if (kind === 'sym' && /[’‘ʼ´`′]/u.test(text)) return "'";
  if (kind === 'sym' && /[–—‐‑‒―−]/u.test(text)) return '-';
  if (kind === 'sym' && text === '～') return '~';
  return plain(text);
}

/** Cuts a text into tokens, in order and without overlap; white space is dropped. */
export function tokensOf(text: string): Token[] {
  const tokens: Token[] = [];
  let gap = false;
  let line = 0;
  for (const match of text.matchAll(PIECE)) {
    const groups = match.groups ?? {};
    const piece = match[0];
    if (groups.space !== undefined) {
      gap = true;
      for (const letter of piece) if (letter === '\n') line += 1;
      continue;
    }
    const kind = (['link', 'num', 'cjk', 'word', 'sym'] as const).find(
      (name) => groups[name] !== undefined,
    )!;
    const start = match.index;
    const norm = normOf(kind, piece);
    const stem = norm.slice(0, 3);
    tokens.push({ kind, text: piece, norm, stem, start, end: start + piece.length, gap, line });
    gap = false;
  }
  return tokens;
}
