import type { DateProperty } from '../types.ts';
import { type Completed, withYears } from './borrow-years.ts';
import type { CueMeaning } from './cues.ts';
import type { Part } from './dates/part.ts';
import type { TimePhrase } from './dates/phrases-of-time.ts';
import { isSaying } from './names-in-words.ts';
import { type Habit, settle } from './order.ts';
import type { Passage } from './passage.ts';
import { type Governed, governedBy } from './properties.ts';
import { type Run, runsIn } from './runs.ts';
import { sourcesFor } from './sources.ts';
import { outsideTitles } from './titles.ts';
import { plain } from './tokens.ts';
import type { NoteClaim } from './types.ts';
import { edtfOf } from './values.ts';

/** What stands above or beside a passage and holds for it. */
export interface Setting {
  readonly meaning?: CueMeaning | undefined;
  readonly source?: string | undefined;
  readonly year?: number | undefined;
  readonly habit?: Habit | undefined;
  /** Habits that the notes state of single sources, by their names in plain letters. */
  readonly habitOf?: ReadonlyMap<string, Habit> | undefined;
  /** The section, the row or the item above tells the printing. */
  readonly tellsPrinting: boolean;
  /** A cell of a date column, a cell of remarks, or a line. */
  readonly kind: 'line' | 'date-cell' | 'remark';
}

/** A claim and the token at which it stands. */
export interface PlacedClaim extends NoteClaim {
  readonly at: number;
  readonly from: number;
}

/** The claims of a passage with the runs of words that name their sources. */
export interface PassageReading {
  /** The passage as it was understood: words of a title say nothing else. */
  readonly passage: Passage;
  readonly claims: readonly PlacedClaim[];
  readonly sources: readonly Run[];
}

/** Below this a date is left over and makes no claim. */
const LEAST = 0.35;

const SOLD =
  /sold|avail|sale|distrib|print|shelves|verkauf|erhaltlich|vend|dispon|venta|vente|venda|myynn|saatav|salg|salu|sprzeda|prodej|koop|stores|shops/u;

function writtenIn(
  _passage: Passage,
  governed: Governed | undefined,
  time: TimePhrase,
): Set<string> {
  const languages = new Set([...(governed?.cue.languages ?? []), ...time.languages]);
  return governed && governed.cost <= 14 ? languages : new Set(time.languages);
}

/** Whether a year alone stands where a date would, and not inside a name. */
function standsAlone(passage: Passage, time: TimePhrase): boolean {
  const next = passage.tokens[time.to];
  const closed = next === undefined || passage.boundaries[time.to] !== 'none';
  return closed || passage.roles[time.to] === 'cue';
}

function trustIn(
  passage: Passage,
  done: Completed,
  governed: Governed | undefined,
  source: string | undefined,
  setting: Setting,
): number {
  const { time } = done;
  const own = governed !== undefined;
  let p = time.trust * (done.borrowed ? 0.92 : 1);
  const told = setting.tellsPrinting || passage.printing.length > 0;
  if (own) {
    p *= governed.cost > 10 ? 0.9 : 0.95;
    if (governed.cue.touching && !told && !source && setting.kind === 'line') p *= 0.4;
  } else if (setting.kind === 'date-cell' || setting.meaning !== undefined) p *= 0.95;
  else if (setting.kind === 'remark') p *= source ? 0.6 : 0.3;
  else if (source) p *= 0.93;
  else p *= told ? 0.85 : 0.3;
  if (time.style === 'bare' && !own && setting.kind !== 'date-cell') {
    p *= standsAlone(passage, time) ? 0.85 : 0.4;
  }
  const dayless = time.parts[0]!.day === undefined;
  const heads = time.from === 0 && passage.boundaries[time.to] !== 'none';
  if (done.borrowed && dayless && !own && !source && !heads && setting.kind === 'line') p *= 0.5;
  if (time.style === 'short' && (own || source !== undefined)) p = Math.max(p, 0.6);
  return p;
}

/** `24/9` without a year is a date only where it opens the passage or touches its cue. */
function placedLikeDate(
  _passage: Passage,
  done: Completed,
  governed: Governed | undefined,
): boolean {
  if (!done.borrowed || done.time.style !== 'slash') return true;
  if (done.time.from === 0) return true;
  return governed !== undefined && Math.abs(governed.cue.to - done.time.from) <= 1;
}

function valuesOf(
  time: TimePhrase,
  parts: readonly Part[],
  meaning: DateProperty,
  passage: Passage,
  governed: Governed | undefined,
): [DateProperty, string][] {
  const words = governed
    ? passage.tokens
        .slice(governed.cue.from, governed.cue.to)
        .map((token) => token.norm)
        .join(' ')
    : '';
  const stretch = meaning === 'on-sale' || meaning === 'distributed-until';
  if (time.last && time.opened === 'from' && stretch && SOLD.test(words)) {
    const { last, ...first } = time;
    return [
      ['on-sale', edtfOf(first, parts)],
      ['distributed-until', edtfOf({ ...first, parts: [last] }, [last])],
    ];
  }
  return [[meaning, edtfOf(time, parts)]];
}

const SAME_DAY =
  /^(?:i e|ie|that is|meaning|eli|d h|das heisst|c a d|ossia|o sea|ou seja|dvs|tj|czyli)$/u;

/** Whether the second date restates the first: `3/4/96, i.e. 3 April 1996`. */
function restates(passage: Passage, before: TimePhrase | undefined, time: TimePhrase): boolean {
  if (!before?.twoWay) return false;
  const between = passage.tokens.slice(before.to, time.from);
  if (between.length === 1 && between[0]!.text === '=') return true;
  const words = between.filter((token) => token.kind === 'word').map((token) => token.norm);
  const part = time.parts[0]!;
  const agrees = before.parts.some((p) => p.day === part.day && p.month === part.month);
  return SAME_DAY.test(words.join(' ')) && agrees;
}

/** The day at the head of a ledger's line on which a plan was made known: `2.2.96 announced for May`. */
function tellsOfPlan(
  passage: Passage,
  governed: readonly (Governed | undefined)[],
  index: number,
  setting: Setting,
): boolean {
  const heads = index === 0 && passage.times[0]!.from === 0 && setting.meaning === undefined;
  return heads && governed[0] === undefined && governed[1]?.meaning === 'announced';
}

const OF_ITSELF =
  /^(?:of|from|dated|printed|published|in|the|,|\(|vom|von|de|du|del|di|da|av|af|z|of the|its|issue|date)$/u;

/** The date of a source itself, before what it says: `Sheaf checklist of Oct 1997: March 1996`. */
function isSourceDate(passage: Passage, done: Completed, run: Run | undefined): boolean {
  const { tokens, times } = passage;
  const next = times[done.index + 1];
  if (!run || !next || run.to > done.time.from || done.time.from - run.to > 4) return false;
  const between = tokens.slice(run.to, done.time.from).map((token) => token.norm);
  if (between.length === 0 || !between.every((word) => OF_ITSELF.test(word))) return false;
  const behind = tokens[done.time.to]?.text === ')' ? done.time.to + 1 : done.time.to;
  const speaks = /^[:：]$/u.test(tokens[behind]?.text ?? '') || isSaying(tokens, behind);
  return speaks && !passage.boundaries.slice(behind, next.from).includes('hard');
}

/** Every claim of a passage, in the order of their dates. */
export function claimsOf(
  written: Passage,
  setting: Setting,
  known: ReadonlySet<string>,
): PassageReading {
  const runs = runsIn(written, known);
  const titles = runs.filter((run) => run.title);
  const passage = outsideTitles(written, titles);
  const governed = governedBy(passage);
  const sources = sourcesFor(passage, runs, governed);
  const claims: PlacedClaim[] = [];
  const used = new Set<Run>();
  const dropped = new Set<number>();
  const all = withYears(passage, setting.year);
  all.forEach((done, place) => {
    if (restates(passage, all[place - 1]?.time, done.time)) dropped.add(all[place - 1]!.index);
  });
  for (const done of all) {
    if (dropped.has(done.index) || tellsOfPlan(passage, governed, done.index, setting)) continue;
    const own = governed[done.index];
    const meaning = own?.meaning ?? setting.meaning ?? 'on-sale';
    const run = sources[done.index];
    const source = run?.text ?? setting.source;
    if (meaning === 'none' || !placedLikeDate(passage, done, own)) continue;
    if (isSourceDate(passage, done, run)) continue;
    const p = trustIn(passage, done, own, source, setting);
    if (p < LEAST) continue;
    if (run) used.add(run);
    claims.push(...placed(passage, done, meaning, own, source, setting, p));
  }
  return { passage, claims, sources: [...used] };
}

function placed(
  passage: Passage,
  done: Completed,
  meaning: DateProperty,
  own: Governed | undefined,
  source: string | undefined,
  setting: Setting,
  p: number,
): PlacedClaim[] {
  const { time } = done;
  const stated = source === undefined ? undefined : setting.habitOf?.get(plain(source));
  const parts = settle(time, stated ?? setting.habit, writtenIn(passage, own, time));
  const words = passage.text.slice(
    passage.tokens[time.from]!.start,
    passage.tokens[time.to - 1]!.end,
  );
  return valuesOf(time, parts, meaning, passage, own).map(([property, value]) => ({
    property,
    value,
    source: source ?? null,
    p: Math.round(Math.min(p, 0.95) * 100) / 100,
    words: words.replace(/\s+/gu, ' '),
    two_way: parts.length > 1,
    at: passage.tokens[time.from]!.line,
    from: time.from,
  }));
}
