import { phraseAt } from '../phrases.ts';
import type { Token } from '../tokens.ts';
import { type Found, found } from './found.ts';
import { ordinalBook, overParticles, partBook, seasonBook, thirdBook } from './lexicon.ts';
import { hasYear } from './part.ts';
import { dayAt } from './worded.ts';
import { yearAt } from './years.ts';

/** `spring 95`, `printemps 1995`, `winter 95/96`, `1995 spring`; without a year it borrows one. */
export function season(tokens: readonly Token[], at: number): Found | undefined {
  const leading = yearAt(tokens, at);
  const start = leading ? leading.to : at;
  const named = phraseAt(seasonBook, tokens, start);
  if (!named) return undefined;
  const extra = { languages: named.languages };
  if (leading) {
    return found(at, named.to, { year: leading.year, code: named.value }, 'worded', extra);
  }
  const year = yearAt(tokens, overParticles(tokens, named.to), 'large');
  if (!year) return found(at, named.to, { code: named.value }, 'worded', { ...extra, trust: 0.6 });
  const slash = tokens[year.to];
  const second =
    slash && /^[-/]$/u.test(slash.norm) ? yearAt(tokens, year.to + 1, 'any') : undefined;
  const to = second?.to ?? year.to;
  return found(at, to, { year: year.year, code: named.value }, 'worded', extra);
}

/** `Q3 1995`, `3Q95`, `H1 1995`, `3. Quartal 1995`, `first half of 1995`, `1995 Q3`. */
export function quarter(tokens: readonly Token[], at: number): Found | undefined {
  const leading = yearAt(tokens, at);
  const dash = tokens[leading?.to ?? 0];
  const start = leading ? leading.to + (dash?.norm === '-' ? 1 : 0) : at;
  const part = quarterCode(tokens, start);
  if (!part) return undefined;
  if (leading) return found(at, part.to, { year: leading.year, code: part.code }, 'worded');
  const sep = tokens[part.to];
  const glued = sep && !sep.gap && /^[-/.]$/u.test(sep.norm) ? part.to + 1 : part.to;
  const year = yearAt(tokens, overParticles(tokens, glued), 'any');
  if (!year) return found(at, part.to, { code: part.code }, 'worded', { trust: 0.7 });
  return found(at, year.to, { year: year.year, code: part.code }, 'worded');
}

function quarterCode(
  tokens: readonly Token[],
  at: number,
): { code: number; to: number } | undefined {
  const [a, b] = [tokens[at], tokens[at + 1]];
  if (a?.kind === 'word' && /^[qth]$/u.test(a.norm) && b?.kind === 'num' && !b.gap) {
    return codeOf(a.norm === 'h' ? 'half' : 'quarter', Number(b.norm), at + 2);
  }
  if (a?.kind === 'num' && b && !b.gap && (b.norm === 'q' || b.norm === 'h')) {
    return codeOf(b.norm === 'h' ? 'half' : 'quarter', Number(a.norm), at + 2);
  }
  const ordinal = phraseAt(ordinalBook, tokens, at);
  const digits = dayAt(tokens, at);
  const rank = ordinal?.value ?? digits?.day;
  const behind = ordinal?.to ?? digits?.to;
  if (rank === undefined || behind === undefined) return undefined;
  const word = phraseAt(partBook, tokens, behind);
  return word ? codeOf(word.value, rank, word.to) : undefined;
}

function codeOf(kind: 'quarter' | 'half', rank: number, to: number) {
  const most = kind === 'quarter' ? 4 : 2;
  if (rank < 1 || rank > most) return undefined;
  return { code: (kind === 'quarter' ? 32 : 39) + rank, to };
}

const BEFORE_DECADE = new Set(
  'annees anos anni jaren lata leta années años the los gli les roku de'.split(' '),
);
const DECADE_ENDINGS = new Set(['s', 'er', 'ern', 'ies', 'eren', 'ych', 'tych']);

/** `the 90s`, `1990s`, `'90s`, `90er Jahre`, `années 90`, `90-luku`, `90-talet`. */
export function decade(tokens: readonly Token[], at: number): Found | undefined {
  const quote = tokens[at]?.norm === "'" ? 1 : 0;
  const token = tokens[at + quote];
  if (token?.kind !== 'num' || !/^(?:\d0|1[89]\d0|20\d0)$/u.test(token.norm)) return undefined;
  const value = Number(token.norm);
  const start = value < 100 ? (value < 50 ? 2000 : 1900) + value : value;
  let to = at + quote + 1;
  if (tokens[to]?.norm === "'" && !tokens[to]?.gap) to += 1;
  if (tokens[to]?.norm === '-' && !tokens[to]?.gap) to += 1;
  const ending = tokens[to];
  const touching = ending?.gap === false ? ending.norm : '';
  const nordic = /^(?:luvu|luku|tal|tallet|talet)/u.test(touching) && tokens[to - 1]?.norm === '-';
  const before = tokens[at - 1];
  if (nordic || DECADE_ENDINGS.has(touching)) {
    const years = /^(?:jahre|jahren)$/u.test(tokens[to + 1]?.norm ?? '') ? 1 : 0;
    return found(at, to + 1 + years, { decade: start }, 'worded');
  }
  if (/^年代$/u.test((tokens[to]?.norm ?? '') + (tokens[to + 1]?.norm ?? ''))) {
    return found(at, to + 2, { decade: start }, 'signs');
  }
  const opened =
    BEFORE_DECADE.has(before?.norm ?? '') &&
    /^(?:ann?e?es|an[on][is]|jaren|lata|leta)/u.test(before?.norm ?? '');
  return opened && value < 100 ? found(at, at + quote + 1, { decade: start }, 'worded') : undefined;
}

/** A year alone. */
export function bareYear(tokens: readonly Token[], at: number): Found | undefined {
  const marked = /^(?:©|\)|label|copyright|slab|labels|labelled|labeled)$/u.test(
    tokens[at - 1]?.norm ?? '',
  );
  const sign = tokens[at - 1]?.text !== ')' || /^[cC©]$/u.test(tokens[at - 2]?.text ?? '');
  const year = yearAt(tokens, at, marked && sign ? 'large' : 'never');
  if (!year) return undefined;
  const [before, after] = [tokens[at - 1], tokens[year.to]];
  const touching = before && !tokens[at]!.gap;
  if (touching && (before.kind === 'word' || /^[-./,:]$/u.test(before.norm))) {
    const letter = /^(?:[cf]|in|sel|prt|ed)$/u.test(before.norm);
    const afterNumber = before.kind === 'sym' && tokens[at - 2]?.kind === 'num' && !before.gap;
    const code =
      before.kind === 'sym' &&
      before.norm === '-' &&
      !before.gap &&
      /^[\p{Lu}\d]+$/u.test(tokens[at - 2]?.text ?? '');
    if ((before.kind === 'word' && !letter) || afterNumber || code) return undefined;
  }
  if (after && !after.gap) {
    if (after.kind === 'num') return undefined;
    if (after.kind === 'word' && !/^(?:r|rok|x)$/u.test(after.norm)) return undefined;
    const joined = tokens[year.to + 1]?.kind === 'num' && !tokens[year.to + 1]?.gap;
    if (
      joined &&
      /^[-.,:]$/u.test(after.norm) &&
      !/^(?:19|20)\d\d$/u.test(tokens[year.to + 1]!.norm)
    ) {
      return undefined;
    }
  }
  const short = tokens[at]!.norm === "'";
  return found(at, year.to, { year: year.year }, 'bare', { trust: short ? 0.8 : 0.9 });
}

/** `early 1995`, `mid-October 93`, `Ende der 90er`: a third of the year, month or decade. */
export function third(
  tokens: readonly Token[],
  at: number,
  within: (at: number) => Found | undefined,
): Found | undefined {
  const word = phraseAt(thirdBook, tokens, at);
  if (!word) return undefined;
  const here = tokens[word.to]?.norm === '-' ? word.to + 1 : word.to;
  const skip = /^(?:der|the|los|anos|in)$/u.test(tokens[here]?.norm ?? '') ? here + 1 : here;
  const rest = within(skip) ?? within(overParticles(tokens, skip));
  const part = rest?.parts[0];
  if (!rest || !part || rest.parts.length > 1 || part.day !== undefined) return undefined;
  if (!hasYear(part) && part.month === undefined) return undefined;
  const languages = [...rest.languages, ...word.languages];
  return found(at, rest.to, { ...part, third: word.value }, rest.style, {
    languages,
    trust: rest.trust * 0.9,
  });
}
