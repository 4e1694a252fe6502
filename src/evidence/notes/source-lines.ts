import type { NoteLine } from './types.ts';

const SOURCE_LINE =
  /^(?:sources?|src|ref|via|quelle|fonte|fuente|lähde|källa|kilde|źródło|zdroj|bron|forrás|出典|출처|来源)\s*[:=：]\s*(\S.{0,80})$/iu;

/** The source that a line names and nothing else: `source: Harbor Row`. */
export function sourceLine(body: string): string | undefined {
  const source = SOURCE_LINE.exec(body)?.[1]?.trim();
  return source !== undefined && !/\d{4}/u.test(source) ? source : undefined;
}

/** Gives the claims right above a line that only names a source that source, where they have none. */
export function lendSource(out: NoteLine[], source: string): boolean {
  let lent = false;
  for (let at = out.length - 1; at >= 0; at -= 1) {
    const line = out[at]!;
    if (
      line.kind !== 'item' ||
      (line.claims.length > 0 && line.claims.every((c) => c.source !== null))
    )
      break;
    if (line.claims.length === 0) continue;
    out[at] = {
      ...line,
      claims: line.claims.map((claim) => ({ ...claim, source: claim.source ?? source })),
    };
    lent = true;
  }
  return lent;
}
