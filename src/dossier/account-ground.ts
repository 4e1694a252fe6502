import type { AccountGround, ToldCounterfeit, ToldPicture } from '../chronicle/index.ts';
import type { Day } from '../evidence/index.ts';
import { correctionsOf } from './corrections.ts';
import { traitRowsOf } from './identification.ts';
import { newestDay, newestIn } from './newest-day.ts';
import { recordsOf } from './population.ts';
import { pricesIn } from './price-ground.ts';
import { rowsOf } from './rows-of.ts';
import { standingOf } from './standing.ts';
import type { Dossier } from './types.ts';

/**
 * What an account is made from in a dossier.
 *
 * @param on null for the newest day on which anything in it was counted, sold, seen or read
 */
export function accountGroundIn(dossier: Dossier, on: Day | null): AccountGround {
  const { manifest, evidence, texts } = dossier;
  const { records } = recordsOf(dossier);
  const day = on ?? newestRead(dossier);
  const prices = pricesIn(dossier, on);
  const counterfeits = counterfeitsOf(dossier);
  return {
    subject: {
      id: manifest.subject,
      title: manifest.title || manifest.subject,
      language: manifest.language,
      widthMm: manifest.width_mm,
      heightMm: manifest.height_mm,
    },
    evidence,
    on: day,
    records,
    prices: prices ? { ground: prices.ground, currency: prices.home.currency } : null,
    traits: traitRowsOf(dossier),
    counterfeits,
    pictures: picturesOf(dossier, counterfeits),
    corrections: correctionsOf(dossier),
    stories: texts,
  };
}

/** The newest day in sales, sightings, population and rates, and on which a source was read. */
function newestRead(dossier: Dossier): number | null {
  const read = [
    newestDay(dossier) ?? Number.NEGATIVE_INFINITY,
    newestIn(dossier.tables.get('claims.csv'), 'read_on'),
    newestIn(dossier.tables.get('sources.csv'), 'accessed'),
  ];
  const newest = Math.max(...read);
  return Number.isFinite(newest) ? newest : null;
}

type Kind = AccountGround['counterfeits'][number];

function counterfeitsOf(dossier: Dossier): Kind[] {
  const stands = standingOf(dossier);
  return rowsOf(dossier, 'counterfeits.csv', (cell) => ({
    id: cell('id'),
    kind: (cell('kind') || 'counterfeit') as ToldCounterfeit['kind'],
    printings: stands(cell('printing')),
    knownSince: cell('known_since'),
    note: cell('note'),
  }));
}

/** Roles that show a card as it is; the others are evidence, offers and measurements. */
const SHOWN = new Set(['reference', 'illustration', 'arrival', '']);

/**
 * Pictures of printings and counterfeits that have `rights` and are not marked to stay. Of a copy
 * only those that its owner marked with `yes`, the first of each side, where it is known which
 * printing it is.
 */
function picturesOf(dossier: Dossier, counterfeits: readonly Kind[]): ToldPicture[] {
  const stands = standingOf(dossier);
  const kinds = new Map(counterfeits.map(({ id, kind }) => [id, kind]));
  const copies = new Map(
    rowsOf(dossier, 'desk/copies.csv', (cell) => [cell('id'), cell('printing')] as const),
  );
  const sides = new Set<string>();
  return rowsOf(dossier, 'pictures.csv', (cell) => cell).flatMap((cell): ToldPicture[] => {
    const copy = copies.get(cell('of'));
    const ids = kinds.has(cell('of')) ? [cell('of')] : stands(copy ?? cell('of'));
    const publish = cell('publish');
    const leaves = copy === undefined ? publish !== 'no' : publish === 'yes';
    const [of, another] = ids;
    if (of === undefined || another !== undefined || !leaves) return [];
    if (cell('rights') === '' || !SHOWN.has(cell('role'))) return [];
    const side = `${cell('of')} ${cell('side')}`;
    if (copy !== undefined && sides.has(side)) return [];
    sides.add(side);
    return [
      {
        file: cell('file'),
        of,
        shows: copy === undefined ? (kinds.get(of) ?? 'printing') : 'copy',
        role: cell('role') || 'illustration',
        side: cell('side') || null,
        by: byWhom(cell('by')),
        rights: cell('rights'),
        knownBy: cell('known_by') || null,
        sha256: cell('sha256'),
      },
    ];
  });
}

/** Who took a picture; `owner` and `seller` are parts that somebody played, no names. */
function byWhom(cell: string): string | null {
  return ['', 'owner', 'seller', 'none'].includes(cell) ? null : cell;
}
