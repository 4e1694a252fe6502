import { numberOf } from './vocabulary.ts';

/** The smallest piece of a note: a word, a run of digits, one East Asian sign, one other sign. */
export interface Token {
  readonly kind: 'word' | 'num' | 'cjk' | 'sym' | 'link';
  readonly text: string;
  /** Lower case without accents, so that `Août` and `aout` are one word. */
  readonly norm: string;
  readonly start: number;
  readonly end: number;
  /** Numbers of `norm` and of its first three letters among the first words of phrases. */
  readonly word: number;
  readonly stem: number;
  /** White space stands before it. */
  readonly gap: boolean;
  /** From 0, counted in line ends within the text. */
  readonly line: number;
}

const PIECE =
  /(?<link>(?:https?:\/\/|www\.)\S{1,2000}|[\w.+-]{1,64}@[\w-]{1,64}(?:\.[\w-]{1,64}){1,4})|(?<num>\p{Nd}+)|(?<cjk>[\p{Script=Han}\p{Script=Hiragana}\p{Script=Katakana}\p{Script=Hangul}ー])|(?<word>[\p{L}\p{M}]+?(?=[\p{Script=Han}\p{Script=Hiragana}\p{Script=Katakana}\p{Script=Hangul}]|[^\p{L}\p{M}]|$))|(?<space>\s+)|(?<sym>.)/suy;

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

/** Digits of any script as those of ASCII: each script’s ten stand in a row, from nought on (Unicode Standard, 4.6). */
function asciiDigits(text: string): string {
  if (/^[0-9]*$/.test(text)) return text;
  return [...text.normalize('NFKD')].map((digit) => digitOf(digit.codePointAt(0) ?? 0)).join('');
}

function digitOf(code: number): number {
  let before = 0;
  while (/\p{Nd}/u.test(String.fromCodePoint(code - before - 1))) before++;
  return before % 10;
}

function normOf(kind: Token['kind'], text: string): string {
  if (kind === 'num') return asciiDigits(text);
  if (kind === 'cjk') return text.normalize('NFKC');
  if (kind === 'sym' && /[’‘ʼ´`′]/u.test(text)) return "'";
  if (kind === 'sym' && /[–—‐‑‒―−]/u.test(text)) return '-';
  if (kind === 'sym' && text === '～') return '~';
  return plain(text);
}

/** The end of a row of plain Latin letters, or -1 where a letter of another kind goes on. */
function latinEnd(text: string, at: number): number {
  let to = at;
  let code = text.charCodeAt(to) | 32;
  while (code >= 97 && code <= 122) {
    to += 1;
    code = text.charCodeAt(to) | 32;
  }
  const next = text.charCodeAt(to);
  return next > 126 || next === 64 || next === 58 || next === 46 || next === 45 || next === 43
    ? -1
    : to;
}

const KINDS = ['link', 'num', 'cjk', 'word', 'sym'] as const;

function pieceAt(text: string, at: number): { kind: Token['kind'] | 'space'; to: number } {
  const code = text.charCodeAt(at) | 32;
  if (code >= 97 && code <= 122 && text.charCodeAt(at) < 128) {
    const to = latinEnd(text, at);
    if (to > at) return { kind: 'word', to };
  }
  if (text.charCodeAt(at) === 32) return { kind: 'space', to: at + 1 };
  PIECE.lastIndex = at;
  const groups = PIECE.exec(text)?.groups ?? {};
  const kind = KINDS.find((name) => groups[name] !== undefined);
  const length = (kind ? groups[kind] : groups.space)?.length ?? 1;
  return { kind: kind ?? 'space', to: at + length };
}

/** Cuts a text into tokens, in order and without overlap; white space is dropped. */
export function tokensOf(text: string): Token[] {
  const tokens: Token[] = [];
  let gap = false;
  let line = 0;
  let at = 0;
  while (at < text.length) {
    const { kind, to } = pieceAt(text, at);
    const piece = text.slice(at, to);
    if (kind === 'space') {
      gap = true;
      for (const letter of piece) if (letter === '\n') line += 1;
    } else {
      const norm = normOf(kind, piece);
      const [word, stem] = [numberOf(norm), numberOf(norm.slice(0, 3))];
      tokens.push({ kind, text: piece, norm, word, stem, start: at, end: to, gap, line });
      gap = false;
    }
    at = to;
  }
  return tokens;
}
