import { headingForm, isRule, type RawLine } from './lines.ts';
import { passageOf } from './passage.ts';

/** How a line goes on from the one before it: in mid-sentence, as an addition, or not at all. */
export type Joining = 'wrap' | 'addition' | 'none';

const SHORTEST_WRAP = 42;
/** Words and signs with which no statement ends. */
const UNFINISHED =
  /(?:[,(/&–—-]|\b(?:the|a|an|of|in|on|at|by|to|and|or|but|from|for|with|as|per|is|was|were|had|has|have|not|that|which|said|says|before|after|until|about|around|between|early|late|mid|january|february|march|april|may|june|july|august|september|october|november|december|jan|feb|mar|apr|jun|jul|aug|sep|sept|oct|nov|dec|le|la|les|de|du|des|et|en|au|à|der|die|das|am|im|und|von|vom|bis|el|los|del|y|o|do|da|em|e|il|di|dal|ja|on|och|og|av|af|i|w|z|na|a))$/iu;

const ends = (body: string) => /[.!?:;。！？]["”’)\]]*$/u.test(body);

function isFree(line: RawLine): boolean {
  return line.body !== '' && !line.bullet && !isRule(line.body) && !headingForm(line.body);
}

function wraps(before: RawLine, line: RawLine, prose: () => boolean): boolean {
  if (before.body.length < SHORTEST_WRAP || ends(before.body)) return false;
  const hanging = line.indent > before.indent;
  if (!hanging && line.indent !== before.indent && !before.bullet) return false;
  if (UNFINISHED.test(before.body)) return true;
  if (before.bullet) return hanging && line.indent <= before.indent + 8;
  const small = /^\p{Ll}/u.test(line.body);
  return (small || line.indent === before.indent) && prose();
}

/** Whether the lines around are sentences and not a list: a full stop within, a capital to begin. */
function isProse(lines: readonly RawLine[], at: number): boolean {
  let from = at;
  while (from > 0 && from > at - 40 && isFree(lines[from - 1]!)) from -= 1;
  let to = at;
  while (to < lines.length && isFree(lines[to]!) && to < at + 40) to += 1;
  let starts = 0;
  let long = 0;
  let inner = 0;
  for (let i = from; i < to; i += 1) {
    const { body } = lines[i]!;
    if (/^\p{Ll}/u.test(body)) starts += 1;
    if (body.length >= SHORTEST_WRAP) long += 1;
    if (/\p{Ll}{2}[.!?] \p{Lu}/u.test(body)) inner += 1;
  }
  const size = to - from;
  const last = lines[to - 1]!.body;
  return (
    size >= 2 &&
    long >= size - 1 &&
    /[.!?]["”)]*$/u.test(last) &&
    (starts > 0 || inner > 0) &&
    inner + starts >= 1
  );
}

/** How line `at` goes on from the line before it. */
export function joining(lines: readonly RawLine[], at: number, open: RawLine): Joining {
  const [before, line] = [lines[at - 1], lines[at]];
  if (!before || !line || line.body === '' || before.body === '') return 'none';
  if (isRule(line.body) || headingForm(line.body)) return 'none';
  if (line.raw.includes('\t') && /\S\t+\S/u.test(line.raw)) return 'none';
  if (!line.bullet && wraps(before, line, () => isProse(lines, at))) return 'wrap';
  const deeper = line.indent > open.indent;
  if (!deeper || before.body.endsWith(':')) return 'none';
  if (passageOf(line.body).times.length > 0) return 'none';
  if (passageOf(open.body).times.length === 0) return 'none';
  return !line.bullet ||
    /^(?:src|source|ref|via|per|quelle|fonte|fuente|lähde|källa|kilde|źródło|zdroj|bron|acc)\b/iu.test(
      line.body,
    )
    ? 'addition'
    : 'none';
}
