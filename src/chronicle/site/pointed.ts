import type { Region, ToldTrait } from '../account/types.ts';
import { type Html, html } from './html.ts';
import type { SitePicture, Teller } from './types.ts';

/** A place on a face, and the traits that are seen there. */
export interface PointedPlace {
  readonly boxMm: Region['boxMm'];
  readonly traits: readonly ToldTrait[];
}

/** The places on a face to point at, from the top; traits of one place share its number. */
export function placesOn(
  traits: readonly ToldTrait[],
  face: Region['face'],
): readonly PointedPlace[] {
  const places = new Map<string, PointedPlace>();
  for (const trait of traits) {
    if (trait.region?.face !== face) continue;
    const { boxMm } = trait.region;
    const before = places.get(boxMm.join())?.traits ?? [];
    places.set(boxMm.join(), { boxMm, traits: [...before, trait] });
  }
  return [...places.values()].sort((a, b) => a.boxMm[1] - b.boxMm[1] || a.boxMm[0] - b.boxMm[0]);
}

/** Units across a picture that is pointed at. */
const ACROSS = 220;
const RADIUS = 9;

/** Numbered marks over a picture; the list beside it tells the same in words. */
export function marksSvg({ marks, sizes }: SitePicture): Html | null {
  const [size] = sizes;
  if (marks === undefined || marks.length === 0 || size === undefined) return null;
  const high = (ACROSS * size.height) / size.width;
  const scaled = marks.map((corners) =>
    corners.map(([x, y]) => [round(x * ACROSS), round(y * high)] as const),
  );
  return html`<svg class="marks" viewBox="0 0 ${ACROSS} ${round(high)}" aria-hidden="true" focusable="false">${scaled.map(
    (corners, i) => markSvg(corners, i + 1, high),
  )}</svg>`;
}

function markSvg(
  corners: readonly (readonly [number, number])[],
  number: number,
  high: number,
): Html {
  const [x, y] = corners[0] ?? [0, 0];
  const cx = within(x, ACROSS);
  const cy = within(y, high);
  return html`<path d="M${corners.map((corner) => corner.join(' ')).join('L')}z"/><circle cx="${cx}" cy="${cy}" r="${RADIUS}"/><text x="${cx}" y="${round(cy + 4)}">${number}</text>`;
}

function within(at: number, length: number): number {
  return round(Math.min(Math.max(at, RADIUS + 1), length - RADIUS - 1));
}

function round(value: number): number {
  return Math.round(value * 10) / 10;
}

/** What each number points at. */
export function marksList(places: readonly PointedPlace[], { words }: Teller): Html {
  const said = ({ trait, value, sees }: ToldTrait) => {
    const what = value === 'none' ? words.absent : value;
    const look = words.looks[sees ?? ''];
    return `${trait}: ${what}${look ? ` (${look})` : ''}`;
  };
  return html`<ol>${places.map(({ traits }) => html`<li>${traits.map(said).join('; ')}</li>`)}</ol>`;
}
