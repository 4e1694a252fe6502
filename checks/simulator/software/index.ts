import type { Printing } from '../../../src/catalogue/index.ts';
import { type Claim, dayOf, weekdayOf } from '../../../src/evidence/index.ts';
import { type Chance, seeded } from '../chance.ts';
import { written } from '../dates.ts';
import type { ClaimTruth, Release, Simulated, Wish } from '../types.ts';
import { tellers } from './manners.ts';

/**
 * A dossier like the version history of one piece of software: as many releases as printings, few
 * sources, each of them late, early or drifting in its own way, hardly two that agree. A guard
 * against an engine that is tuned to dossiers of cards. Rates are drawn anew for each dossier; the
 * wished number of claims and sources is not looked at.
 */
export function simulateSoftware(wish: Wish): Simulated {
  const chance = seeded(wish.seed);
  const { releases, printings, weekdays } = history(chance, wish.printings);
  const sources = chance.shuffle(tellers(chance));
  const [first, last] = [releases[0]!.day, releases[releases.length - 1]!.day];
  const claims: Claim[] = [];
  const truths: ClaimTruth[] = [];
  for (const source of sources) {
    for (const release of releases) {
      if (!chance.yes(source.coverage)) continue;
      const lag = source.lag((release.day - first) / (last - first + 1));
      const date = written(release.day + lag, 'day');
      const row = claims.length + 2;
      const printing = release.printings[0]!;
      claims.push({
        row,
        printings: [printing],
        source: source.id,
        property: 'on-sale',
        value: date.text,
        date,
      });
      truths.push({ row, how: lag === 0 ? 'right' : source.how, pen: false, right: lag === 0 });
    }
  }
  return {
    evidence: {
      printings,
      products: [],
      contents: [],
      sources: sources.map(({ id, kind }) => ({ id, kind, cites: [] })),
      claims,
      orders: [],
    },
    truth: {
      days: new Map(releases.map((r) => [r.printings[0]!, r.day])),
      releases,
      claims: new Map(truths.map((one) => [one.row, one])),
      habits: [],
      derivations: [],
      weekdays: new Map([['/', weekdays]]),
    },
  };
}

/** Releases in order of time, with favourite weekdays and pauses of very different length. */
function history(chance: Chance, count: number) {
  const favourite = chance.yes(0.3) ? 0 : chance.between(0, 0.8);
  const weekend = chance.between(0.05, 0.8);
  const best = chance.whole(0, 4);
  const raw = [1, 1, 1, 1, 1, weekend, weekend];
  const total = raw.reduce((sum, w) => sum + w, 0);
  const weekdays = raw.map((w, i) => ((1 - favourite) * w) / total + (i === best ? favourite : 0));
  const pause = chance.between(6, 40);
  const layout = chance.pick(['product', 'wave', 'none'] as const);
  let day: number = dayOf(chance.whole(1996, 2014), chance.whole(1, 12), 1);
  const releases: Release[] = [];
  const printings: Printing[] = [];
  for (let i = 1; i <= count; i++) {
    day += 1 + Math.round(pause * chance.gamma(0.7));
    while (!chance.yes(weekdays[weekdayOf(day) - 1]!)) day += 1;
    const product = layout === 'product' ? `release-${i}` : '';
    const wave = layout === 'wave' ? `${i}` : '';
    const place = { ...(product && { product }), ...(wave && { product: 'all', wave }) };
    printings.push({ id: `v${i}`, number: `${i}`, ...place });
    releases.push({ ...NOWHERE, id: `e${i}`, product, wave, day, printings: [`v${i}`] });
  }
  return { releases, printings, weekdays };
}

const NOWHERE = { market: '', edition: '', channel: '', coarse: false };
