import { dayFrom } from '../../evidence/index.ts';
import type { Release } from '../account/types.ts';
import { tellDay } from '../words/days.ts';
import { tellP } from '../words/numbers.ts';
import { type Html, html } from './html.ts';
import type { Teller } from './types.ts';

const [ACROSS, HIGH] = [640, 96];
/** From this probability on one day says it all, and no figure is drawn. */
const SURE = 0.99;

/** How the probability lies over the days, where there is doubt; a bar a day, or a run of days. */
export function daysHtml(
  { days: all, pBest, best }: Release,
  { words, phrases }: Teller,
): Html | null {
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
  const label = `${words.days}: ${tellDay(phrases, best)} ${tellP(phrases, pBest)}`;
  return html`<figure class="days"><figcaption>${words.days}</figcaption><svg viewBox="0 0 ${ACROSS} ${HIGH}" preserveAspectRatio="none" role="img" aria-label="${label}">${[
    ...bars,
  ].map(
    ([at, p]) =>
      html`<rect x="${round(at * step)}" y="${round(HIGH - (p / most) * HIGH)}" width="${round(Math.max(1, Math.min(step - 1, 14)))}" height="${round((p / most) * HIGH)}"/>`,
  )}</svg><p class="ends"><span>${tellDay(phrases, first)}</span><span>${tellDay(phrases, last)}</span></p></figure>`;
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
