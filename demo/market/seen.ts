import { dayOf, isoOf } from '../../src/evidence/index.ts';
import type { Chance } from '../../src/maths/index.ts';
import type { Row } from '../table.ts';
import { pick, QUARTERS } from './population.ts';
import { BASE } from './sales.ts';
import type { Slab } from './slabs.ts';

const PLACES = [
  'Fenboard, “show your hares”',
  'table at the Tampere card fair',
  'Rämehuuto, lot without result',
  '너울섬 장터, display case',
  'a film of a collection',
];

/** Seventy-odd sightings of certain slabs, some of them again and again. */
export function sightingRows(all: readonly Slab[], luck: Chance): readonly Row[] {
  const known = all.filter((slab) => slab.printing !== '');
  const pull = known.map((slab) => slab.restless ** 2);
  const first = dayOf(2024, 2, 1);
  const days = Array.from({ length: 74 }, () => first + luck.below(870)).sort((a, b) => a - b);
  return days.flatMap((day) => {
    const slab = known[pick(pull, luck)];
    if (slab === undefined) return [];
    const { printing, service, certificate, label, grade } = slab;
    const where = PLACES[luck.below(PLACES.length)] ?? '';
    return [{ date: isoOf(day), printing, service, certificate, label, grade, where }];
  });
}

/** How many copies were on offer at two venues at the end of each quarter. */
export function supplyRows(luck: Chance): readonly Row[] {
  return QUARTERS.flatMap((asOf) =>
    Object.entries(BASE).flatMap(([printing, base]) =>
      ['Rämehuuto', 'Ninestile Rooms'].map((venue) => ({
        as_of: asOf,
        venue,
        printing,
        raw: String(Math.floor((luck.gamma(2) * 60) / base)),
        graded: String(Math.floor((luck.gamma(2) * 40) / base)),
      })),
    ),
  );
}
