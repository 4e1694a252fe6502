import { dayFrom, parseEdtf } from '../../evidence/index.ts';
import type { Release, ToldPrinting } from '../account/types.ts';
import { certaintyOf } from './certainty.ts';
import { runEnds, tellDay, tellEdtf, tellRun } from './days.ts';
import { tellCount, tellP } from './numbers.ts';
import type { Sentence, Telling } from './telling.ts';
import type { Phrases } from './types.ts';

/** When a printing came out, with what, and in which place, as sentences. */
export function releaseSentences(printing: ToldPrinting, telling: Telling): Sentence[] {
  const { release, id } = printing;
  const { phrases, called } = telling;
  const { sentences, list } = phrases;
  const figure = `release.${id}`;
  const modes = release.modes.map(
    ({ from, to, p }) => [tellRun(phrases, from, to), tellP(phrases, p)] as const,
  );
  const others = release.together.map(called);
  return [
    { figure, text: whenSentence(release, phrases) },
    ...doubtSentence(release, phrases).map((text) => ({ figure, text })),
    ...(modes.length > 1 ? [{ figure, text: sentences.eitherOr(modes) }] : []),
    ...(others.length > 0 ? [{ figure, text: sentences.together(list(others, 'and')) }] : []),
    ...placeSentence(printing, telling),
  ];
}

/** A day that is less than most probable stands beside its window. */
function doubtSentence(
  { state, pBest, interval95, pInterval }: Release,
  phrases: Phrases,
): string[] {
  const sure = ['almost-certain', 'most-probable'].includes(certaintyOf(pBest));
  if (state !== 'day' || sure || interval95 === null) return [];
  return [withinSentence(interval95, pInterval, phrases)];
}

function withinSentence(
  [first, last]: readonly [string, string],
  pInterval: number,
  phrases: Phrases,
): string {
  const { sentences } = phrases;
  const [from = '', to] = runEnds(phrases, dayFrom(first), dayFrom(last));
  const p = tellP(phrases, pInterval);
  return to === undefined ? sentences.withinOne(from, p) : sentences.within(from, to, p);
}

/** The sentence that says when a printing was first on sale. */
export function whenSentence(release: Release, phrases: Phrases): string {
  const { sentences, certainty } = phrases;
  const { state, best, pBest, interval95, pInterval, edtf } = release;
  if (state === 'open' || best === null) return sentences.open;
  if (state === 'day') {
    const how = certainty[certaintyOf(pBest)];
    return sentences.onDay(how, tellDay(phrases, best), tellP(phrases, pBest));
  }
  if (state === 'bounded' || interval95 === null) return boundSentence(edtf, phrases);
  return withinSentence(interval95, pInterval, phrases);
}

function boundSentence(edtf: string, phrases: Phrases): string {
  const { sentences } = phrases;
  const reading = parseEdtf(edtf);
  const ranges = reading.ok ? reading.date.ranges : [];
  const [first, last] = [ranges[0]?.first, ranges.at(-1)?.last];
  const open = first === undefined || last === undefined || !Number.isFinite(first);
  if (open && !Number.isFinite(last)) return sentences.open;
  if (open) return sentences.noLater(endOf(last, phrases));
  if (!Number.isFinite(last)) return sentences.noEarlier(endOf(first, phrases));
  return sentences.leftBetween(tellEdtf(phrases, edtf));
}

function endOf(day: number | undefined, phrases: Phrases): string {
  return day === undefined ? '' : runEnds(phrases, day, day).join('');
}

function placeSentence({ id, release }: ToldPrinting, telling: Telling): Sentence[] {
  const { account, phrases, called } = telling;
  const { sentences, certainty, units } = phrases;
  const n = account.printings.length;
  if (n < 2) return [];
  const of = units.printings(tellCount(phrases, n), false);
  const { after, place, pFirst } = release;
  const figure = `place.${id}`;
  if (after === null) {
    if (pFirst === 0) return [];
    const how = certainty[certaintyOf(pFirst)];
    return [{ figure, text: sentences.first(how, of, tellP(phrases, pFirst)) }];
  }
  const text = after.stated
    ? sentences.placeStated(tellCount(phrases, place), of, called(after.id))
    : sentences.place(
        tellCount(phrases, place),
        of,
        certainty[certaintyOf(after.p)],
        called(after.id),
        tellP(phrases, after.p),
      );
  return [{ figure, text }];
}
