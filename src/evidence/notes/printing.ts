import { type PhraseMatch, phraseAt, phraseBook } from './phrases.ts';
import type { Token } from './tokens.ts';
import type { PrintingWords } from './types.ts';
import { LANGUAGE_NAMES } from './words/languages.ts';
import { COUNTRY_NAMES } from './words/markets.ts';
import {
  CARD_NUMBER,
  EDITIONS,
  FINISHES,
  NO_NUMBER,
  PRODUCT_NOUNS,
  WAVE_WORDS,
} from './words/printing-words.ts';
import { SOURCE_NOUNS } from './words/source-words.ts';
import { ORDINALS } from './words/times-of-year.ts';

/** Words that tell a column of the printing, and the tokens they stand on. */
export interface PrintingSpan {
  readonly from: number;
  readonly to: number;
  readonly column: 'language' | 'market' | 'number' | 'finish' | 'edition' | 'wave' | 'product';
  readonly value: string;
}

const named = (names: Readonly<Record<string, string>>) =>
  phraseBook(Object.entries(names).map(([value, words]) => [value, { any: words }] as const));

const languages = named(LANGUAGE_NAMES);
const markets = named(COUNTRY_NAMES);
const finishes = phraseBook(FINISHES);
const editions = phraseBook(EDITIONS);
const waves = phraseBook([[true, WAVE_WORDS]] as const);
const ordinals = phraseBook(ORDINALS);
const noNumber = phraseBook([[true, NO_NUMBER]] as const);
const cardNumber = phraseBook([[true, CARD_NUMBER]] as const);
const products = phraseBook([[true, PRODUCT_NOUNS]] as const);
const sourceNouns = phraseBook([[true, SOURCE_NOUNS]] as const);

const WEAK_PRODUCT =
  /^(?:box|game|insert|pack|magazine|calendar|display|folder|deck|comic|jumbo|bundle|heft|magazin|spiel|jeu|juego|jogo|gioco|spel|peli|lehti|gra|hra|tidning|blad|spil|revista|rivista|tijdschrift|doos|paket|ask|lek|packung|paquet|pakka)$/u;

function rankAt(tokens: readonly Token[], at: number): { rank: number; to: number } | undefined {
  const word = phraseAt(ordinals, tokens, at);
  if (word) return { rank: word.value, to: word.to };
  const token = tokens[at];
  if (token?.kind !== 'num' || token.norm.length > 2) return undefined;
  let to = at + 1;
  const next = tokens[to];
  const ending =
    next && !next.gap && /^(?:st|nd|rd|th|e|er|re|ere|eme|a|o|ª|º|\.|:)$/u.test(next.norm);
  if (ending) to += 1;
  if (next?.norm === ':' && /^[ae]$/u.test(tokens[to]?.norm ?? '')) to += 1;
  if (next?.norm === '.' && /^[ªº]$/u.test(tokens[to]?.norm ?? '')) to += 1;
  return { rank: Number(token.norm), to };
}

/** `wave 1`, `2nd print`, `1ère vague`, `w2`. */
function waveAt(tokens: readonly Token[], at: number, free: (at: number) => boolean) {
  const word = phraseAt(waves, tokens, at);
  if (word) {
    const number = tokens[word.to];
    const short = number?.kind === 'num' && number.norm.length === 1 && free(word.to);
    const sole =
      /^[-./]$/u.test(tokens[word.to + 1]?.norm ?? '') &&
      tokens[word.to + 1]?.gap === false &&
      tokens[word.to + 2]?.kind === 'num';
    const sign = tokens[at]!.kind === 'cjk';
    if (short && !sole && !sign) return { to: word.to + 1, value: String(Number(number.norm)) };
    return undefined;
  }
  if (tokens[at]?.norm === 'w' && tokens[at + 1]?.kind === 'num' && !tokens[at + 1]!.gap) {
    return { to: at + 2, value: String(Number(tokens[at + 1]!.norm)) };
  }
  const first = tokens[at]?.norm === '第' ? at + 1 : at;
  const rank = rankAt(tokens, first);
  if (!rank || !free(first)) return undefined;
  const noun = phraseAt(waves, tokens, rank.to);
  const bare =
    rank.to === first + 1 && tokens[first]!.kind === 'num' && tokens[rank.to]?.kind !== 'cjk';
  return noun && !bare ? { to: noun.to, value: String(rank.rank) } : undefined;
}

/** A code or number behind its marker: `no. 14`, `#KS-14`, `14/102`. */
function codeAt(tokens: readonly Token[], at: number, free: (at: number) => boolean) {
  let to = at;
  let text = '';
  while (to < at + 6 && tokens[to] && free(to) && (to === at || !tokens[to]!.gap)) {
    const { kind, norm } = tokens[to]!;
    const joined = /^[-/]$/u.test(norm) && tokens[to + 1] && !tokens[to + 1]!.gap;
    if (kind !== 'num' && !(kind === 'word' && tokens[to]!.text.length <= 4) && !joined) break;
    text += tokens[to]!.text;
    to += 1;
  }
  return /\d/u.test(text) && text.length <= 12 ? { to, value: text } : undefined;
}

function numberAt(tokens: readonly Token[], at: number, free: (at: number) => boolean) {
  const none = phraseAt(noNumber, tokens, at);
  if (none) return { to: none.to, value: 'none' };
  const marker = phraseAt(cardNumber, tokens, at);
  if (marker && !ofPeriodical(tokens, at)) {
    const code = codeAt(tokens, marker.to, free);
    if (code) return code;
  }
  const token = tokens[at]!;
  const next = tokens[at + 1];
  const third = tokens[at + 2];
  const glued = next && third && !next.gap && !third.gap && third.kind === 'num';
  const opens = token.gap || at === 0 || !/^[-/.]$/u.test(tokens[at - 1]!.norm);
  if (!glued || !opens || !free(at) || !free(at + 2)) return undefined;
  const code =
    token.kind === 'word' &&
    next.norm === '-' &&
    token.text.length <= 4 &&
    token.text === token.text.toUpperCase();
  const share =
    token.kind === 'num' &&
    next.norm === '/' &&
    Number(third.norm) > 31 &&
    token.text.length <= 3 &&
    third.text.length <= 3 &&
    Number(token.norm) <= Number(third.norm) + 60 &&
    third.text.length + token.text.length > 3;
  const closed = !(tokens[at + 3] && !tokens[at + 3]!.gap && /^[-/]$/u.test(tokens[at + 3]!.norm));
  if (!(code || share) || !closed) return undefined;
  return { to: at + 3, value: token.text + next.text + third.text };
}

/** Whether the number behind the marker is that of a periodical: `Tallow Monthly no. 7`. */
function ofPeriodical(tokens: readonly Token[], at: number): boolean {
  const before = tokens[at - 1];
  if (before?.kind === 'num')
    return (
      /^(?:vol|volume|bd|jg)$/u.test(tokens[at - 2]?.norm ?? '') || tokens[at - 2]?.norm === '.'
    );
  if (before?.kind !== 'word') return false;
  return phraseAt(sourceNouns, tokens, at - 1)?.to === at || /^(?:issue|vol)$/u.test(before.norm);
}

/** The words of a product's name: capital words or a quotation, then the noun. */
function productAt(tokens: readonly Token[], at: number, free: (at: number) => boolean) {
  const noun = phraseAt(products, tokens, at);
  if (!noun) return undefined;
  let to = noun.to;
  for (
    let more = phraseAt(products, tokens, to);
    more && !/^[A-Z]/u.test(tokens[at]!.text);
    more = phraseAt(products, tokens, to)
  )
    to = more.to;
  let from = at;
  const quote = tokens[from - 1];
  if (quote && /^["”»“]$/u.test(quote.text)) {
    let open = from - 2;
    while (open >= 0 && open > from - 8 && !/^["“«„]$/u.test(tokens[open]!.text)) open -= 1;
    if (open >= 0 && open > from - 8) from = open;
  } else {
    while (
      from > 0 &&
      free(from - 1) &&
      tokens[from - 1]!.kind === 'word' &&
      tokens[from]!.gap &&
      /^\p{Lu}\p{Ll}/u.test(tokens[from - 1]!.text) &&
      from > at - 4 &&
      !phraseAt(languages, tokens, from - 1) &&
      !phraseAt(markets, tokens, from - 1) &&
      !phraseAt(finishes, tokens, from - 1)
    ) {
      from -= 1;
    }
  }
  const weak = WEAK_PRODUCT.test(tokens[at]!.norm) && to === at + 1;
  return weak && from === at ? undefined : { from, to };
}

const CODES: Readonly<Record<string, ['language' | 'market', string]>> = {
  en: ['language', 'en'],
  de: ['language', 'de'],
  fr: ['language', 'fr'],
  es: ['language', 'es'],
  pt: ['language', 'pt'],
  it: ['language', 'it'],
  nl: ['language', 'nl'],
  fi: ['language', 'fi'],
  sv: ['language', 'sv'],
  da: ['language', 'da'],
  no: ['language', 'nb'],
  nb: ['language', 'nb'],
  pl: ['language', 'pl'],
  cs: ['language', 'cs'],
  hu: ['language', 'hu'],
  ja: ['language', 'ja'],
  ko: ['language', 'ko'],
  zh: ['language', 'zh'],
  ru: ['language', 'ru'],
  us: ['market', 'US'],
  uk: ['market', 'GB'],
  br: ['market', 'BR'],
  kr: ['market', 'KR'],
  jp: ['market', 'JP'],
  cz: ['market', 'CZ'],
  dk: ['market', 'DK'],
  se: ['market', 'SE'],
  gb: ['market', 'GB'],
};

/** A code of two letters in capitals, or at the head of its line: `fi foil`, `br: 1996`. */
function letterCodeAt(tokens: readonly Token[], at: number): PrintingSpan | undefined {
  const token = tokens[at]!;
  const code = token.text.length === 2 ? CODES[token.norm] : undefined;
  if (!code) return undefined;
  const capital = token.text === token.text.toUpperCase() && token.norm !== 'no';
  const next = tokens[at + 1];
  const wave = next?.norm === 'w' && tokens[at + 2]?.kind === 'num';
  const heads =
    at === 0 &&
    next !== undefined &&
    (/^[:#|=-]$/u.test(next.norm) ||
      next.kind === 'num' ||
      wave ||
      phraseAt(finishes, tokens, 1) !== undefined);
  return capital || heads ? { from: at, to: at + 1, column: code[0], value: code[1] } : undefined;
}

function marketAt(tokens: readonly Token[], at: number): PhraseMatch<string> | undefined {
  const { text } = tokens[at]!;
  const found = phraseAt(markets, tokens, at);
  return text.length <= 2 && found && found.to === at + 1 ? undefined : found;
}

/** The phrases that tell columns of the printing, in the order in which they stand. */
export function printingSpans(
  tokens: readonly Token[],
  taken: (at: number) => boolean,
  text: string,
): PrintingSpan[] {
  const spans: PrintingSpan[] = [];
  const free = (at: number) => !taken(at);
  let at = 0;
  while (at < tokens.length) {
    const span = taken(at) ? undefined : spanAt(tokens, at, free, text);
    if (span) spans.push(span);
    at = span ? span.to : at + 1;
  }
  return spans;
}

/** A finish that is a part of a source's name: `Silver catalogue`, `Hopea-luettelo`. */
function inName(tokens: readonly Token[], at: number, to: number): boolean {
  if (!/^\p{Lu}/u.test(tokens[at]!.text)) return false;
  const hyphen = tokens[to]?.norm === '-' && !tokens[to]!.gap ? to + 1 : to;
  const next = tokens[hyphen];
  if (next === undefined) return false;
  const capitals = at > 0 && /^\p{Lu}\p{Ll}/u.test(next.text) && hyphen === to;
  return phraseAt(sourceNouns, tokens, hyphen) !== undefined || capitals;
}

function spanAt(
  tokens: readonly Token[],
  at: number,
  free: (at: number) => boolean,
  text: string,
): PrintingSpan | undefined {
  const edition = phraseAt(editions, tokens, at);
  if (edition) return { from: at, to: edition.to, column: 'edition', value: edition.value };
  const wave = waveAt(tokens, at, free);
  if (wave) return { from: at, to: wave.to, column: 'wave', value: wave.value };
  const number = numberAt(tokens, at, free);
  if (number) return { from: at, to: number.to, column: 'number', value: number.value };
  const code = letterCodeAt(tokens, at);
  if (code) return code;
  const language = phraseAt(languages, tokens, at);
  const market = marketAt(tokens, at);
  if (market && market.to >= (language?.to ?? 0)) {
    return { from: at, to: market.to, column: 'market', value: market.value };
  }
  if (language) return { from: at, to: language.to, column: 'language', value: language.value };
  const finish = phraseAt(finishes, tokens, at);
  if (finish && !inName(tokens, at, finish.to))
    return { from: at, to: finish.to, column: 'finish', value: finish.value };
  const product = productAt(tokens, at, free);
  if (!product) return undefined;
  const value = text.slice(tokens[product.from]!.start, tokens[product.to - 1]!.end);
  return { ...product, column: 'product', value };
}

/** The columns that the phrases tell; of two for one column the first holds. */
export function printingOf(spans: readonly PrintingSpan[]): PrintingWords | null {
  const columns: Record<string, string> = {};
  for (const { column, value } of spans) columns[column] ??= value;
  return spans.length === 0 ? null : columns;
}
