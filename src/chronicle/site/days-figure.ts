import { dayFrom } from '../../evidence/index.ts';
import type { Release } from '../account/types.ts';
import { tellDay } from '../words/days.ts';
import { tellP } from '../words/numbers.ts';
import type { Filling } from './cells.ts';
import { type Html, html } from './html.ts';
import type { Teller } from './types.ts';

const [ACROSS, HIGH] = [640, 96];
/** From this probability on one day says it all, and no figure is drawn. */
const SURE = 0.99;

/** How the probability lies over the days, where there is doubt; a bar a day, or a run of days. */
export function daysHtml(release: Release, teller: Teller): Html | null {
  const bars = dayBars(release, teller);
  if (bars === null) return null;
  const rects = bars.rects.map(
    ({ x, y, width, height }) =>
      html`<rect x="${x}" y="${y}" width="${width}" height="${height}"/>`,
  );
  return html`<figure class="days"><figcaption>${teller.words.days}</figcaption><svg viewBox="0 0 ${ACROSS} ${HIGH}" preserveAspectRatio="none" role="img" aria-label="${bars.alternative}">${rects}</svg><p class="ends"><span>${bars.from}</span><span>${bars.to}</span></p></figure>`;
}

/** Bars in a field of 640 by 96, and the words beside them. */
export interface DayBars {
  readonly rects: readonly Readonly<Record<'x' | 'y' | 'width' | 'height', number>>[];
  /** First and last day in words. */
  readonly from: string;
  readonly to: string;
  readonly alternative: string;
}

/** The probability of each day as bars; null where one day says it all. */
export function dayBars(
  { days: all, pBest, best }: Release,
  { words, phrases }: Filling,
): DayBars | null {
  const days = worthDrawing(all);
  const [first, last] = [days[0]?.[0], days.at(-1)?.[0]];
  if (pBest >= SURE || first === undefined || last === undefined || best === null) return null;
  const [from, to] = [dayFrom(first), dayFrom(last) + 1];
  const perBar = Math.max(1, Math.ceil((to - from) / (ACROSS / 4)));
  const bars = new Map<number, number>();
  for (const [day, p] of days) {
    const at = Math.floor((dayFrom(day) - from) / perBar);
    bars.set(at, (bars.get(at) ?? 0) + p);
  }
  const most = Math.max(...bars.values());
  const step = (ACROSS * perBar) / (to - from);
  return {
    rects: [...bars].map(([at, p]) => ({
      x: round(at * step),
      y: round(HIGH - (p / most) * HIGH),
      width: round(Math.max(1, Math.min(step - 1, 14))),
      height: round((p / most) * HIGH),
    })),
    from: tellDay(phrases, first),
    to: tellDay(phrases, last),
    alternative: `${words.days}: ${tellDay(phrases, best)} ${tellP(phrases, pBest)}`,
  };
}

function round(value: number): number {
  return Math.round(value * 10) / 10;
}

/** Days left out at either end hold together at most this much. */
const TAILS = 0.005;

/** Without rare days far off, which would squeeze the others into one line. */
function worthDrawing(days: Release['days']): Release['days'] {
  const from = rareAtHead(days);
  return days.slice(from, days.length - rareAtHead([...days].reverse()));
}

/** How many days at the head are rare together. */
function rareAtHead(days: Release['days']): number {
  let together = 0;
  return days.findIndex(([, p]) => {
    together += p;
    return together > TAILS;
  });
}
