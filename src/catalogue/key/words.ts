import { sayTrait } from '../identify/marks.ts';
import type { IdentificationKey, Lead } from './key.ts';

/** What a key is called by and for when. */
export interface KeyAround {
  readonly title: string;
  /** The day that the numbers of copies hold for; empty where the dossier has none. */
  readonly day: string;
  readonly called: (id: string) => string;
}

/** Notes that stand under a key, on the page and in the terminal. */
export function keyNotes(key: IdentificationKey, { called }: KeyAround): readonly string[] {
  const looks = `A copy takes ${key.expected_looks.toFixed(1)} looks on average, of the effort of ${key.expected_effort.toFixed(1)} by eye.`;
  const out =
    key.left_out > 0
      ? [
          `${key.left_out <= 0.005 ? '<1' : Math.round(100 * key.left_out)} % of copies go a way that was too rare for this page.`,
        ]
      : [];
  const pairs = key.alike.map((ids) => ids.map(called).join(' and '));
  const alike =
    pairs.length > 0 ? [`No known trait tells apart, in every case: ${pairs.join('; ')}.`] : [];
  const home =
    key.keep_at_home.length > 0
      ? [
          `Keep this page at home: ${key.keep_at_home.map(sayTrait).join(', ')} is not to be published.`,
        ]
      : [];
  return [
    `${looks} Every reading is taken for right; a copy that fits nowhere, or a look in doubt, is for the probabilities of “identify”. A key gives no verdict on a copy.`,
    ...out,
    ...alike,
    ...home,
  ];
}

/** Where a lead goes, in words. */
export function leadsTo({ to, ids }: Lead, called: (id: string) => string): string {
  return to === null ? ids.map(called).join(' or ') : String(to);
}
