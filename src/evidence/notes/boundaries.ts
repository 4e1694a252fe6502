import type { Token } from './tokens.ts';

/** How strongly a token parts what stands on its two sides. */
export type Boundary = 'none' | 'light' | 'hard';

const ABBREVIATIONS = new Set(
  'no nr nro num pub acc approx ca c p pp vol ed mag cat dept st mr mrs dr jan feb mar apr jun jul aug sep sept oct okt nov dec dez iss ver vs cf ref resp lt bzw inkl usw etc inc co ltd intl off misc prob poss est s a k'.split(
    ' ',
  ),
);

function sentenceEnds(tokens: readonly Token[], at: number): boolean {
  const [before, next] = [tokens[at - 1], tokens[at + 1]];
  if (next === undefined) return true;
  if (!next.gap || (before && ABBREVIATIONS.has(before.norm))) return false;
  if (before?.kind === 'word' && before.text.length === 1) return false;
  return !/^\p{Ll}/u.test(next.text) || next.line > tokens[at]!.line;
}

/** Whether the token parts clauses (`hard`), pieces of a clause (`light`), or nothing. */
export function boundaryAt(tokens: readonly Token[], at: number): Boundary {
  const token = tokens[at]!;
  if (token.kind !== 'sym') return 'none';
  if (/^[;•·●■★；。¶⏎]$/u.test(token.text)) return 'hard';
  if (/^[.!?！？]$/u.test(token.text)) return sentenceEnds(tokens, at) ? 'hard' : 'none';
  if (/^[,:()[\]{}|=→⇒¦、，：（）「」【】]$/u.test(token.text)) return 'light';
  if (token.text === '/' && token.gap) return 'light';
  if (token.norm === '-') return token.gap && (tokens[at + 1]?.gap ?? true) ? 'light' : 'none';
  return 'none';
}
