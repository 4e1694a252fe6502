import type { DefectKind } from '../defects.ts';
import type { PointPx } from '../geometry/points.ts';

/**
 * A mark set by hand, as a W3C Web Annotation (`w3c:annotation`): its kind as a tag, words as a
 * comment, its place as a selector in pixels of the upright picture.
 */
export interface Annotation {
  readonly '@context': 'http://www.w3.org/ns/anno.jsonld';
  /** An IRI of its own, `urn:uuid:…`. */
  readonly id: string;
  readonly type: 'Annotation';
  /** `tagging`: the hand adds a mark; `assessing`: it judges one that was measured. */
  readonly motivation: 'tagging' | 'assessing';
  /** RFC 3339. */
  readonly created: string;
  readonly body: readonly TextualBody[];
  readonly target: { readonly source: string; readonly selector: Selector };
}

/** One word or sentence of an annotation. */
export interface TextualBody {
  readonly type: 'TextualBody';
  /** `tagging`: the kind of the mark; `classifying`: what the hand says of it; `commenting`: its words. */
  readonly purpose: 'tagging' | 'classifying' | 'commenting';
  readonly value: string;
}

/** A place in a picture: a rectangle (`w3c:fragments`), or a polygon or line as SVG. */
export interface Selector {
  readonly type: 'FragmentSelector' | 'SvgSelector';
  readonly conformsTo?: 'http://www.w3.org/TR/media-frags/';
  readonly value: string;
}

/** A place in pixels: points round an area, or along a line. */
export interface Shape {
  readonly points: readonly PointPx[];
  readonly closed: boolean;
}

/** The kind of mark that an annotation speaks of, as it stands there. */
export function kindOf({ body }: Annotation): DefectKind | string {
  return body.find(({ purpose }) => purpose === 'tagging')?.value ?? '';
}

/** What the hand says of a measured mark; undefined where it adds one of its own. */
export function wordOf({ body, motivation }: Annotation): 'confirmed' | 'rejected' | undefined {
  if (motivation !== 'assessing') return undefined;
  const word = body.find(({ purpose }) => purpose === 'classifying')?.value;
  return word === 'rejected' ? 'rejected' : 'confirmed';
}

/** The place of a selector; undefined where it is none that is understood. */
export function shapeOf({ type, value }: Selector): Shape | undefined {
  return type === 'FragmentSelector' ? rectangle(value) : drawing(value);
}

/** The selector of a place. */
export function selectorOf({ points, closed }: Shape): Selector {
  const list = points.map(([x, y]) => `${round(x)},${round(y)}`).join(' ');
  const name = closed ? 'polygon' : 'polyline';
  return {
    type: 'SvgSelector',
    value: `<svg xmlns="http://www.w3.org/2000/svg"><${name} points="${list}"/></svg>`,
  };
}

function rectangle(value: string): Shape | undefined {
  const numbers = /^xywh=(?:pixel:)?([\d.]+),([\d.]+),([\d.]+),([\d.]+)$/.exec(value)?.slice(1);
  if (!numbers) return undefined;
  const [x, y, w, h] = numbers.map(Number) as [number, number, number, number];
  if (![x, y, w, h].every(Number.isFinite)) return undefined;
  // A fragment counts from the rim of the first pixel, points from its centre.
  const [left, top] = [x - 0.5, y - 0.5];
  const points: PointPx[] = [
    [left, top],
    [left + w, top],
    [left + w, top + h],
    [left, top + h],
  ];
  return { points, closed: true };
}

function drawing(value: string): Shape | undefined {
  const found = /<(polygon|polyline)\s+points="([-\d.,\s]+)"\s*\/?>/.exec(value);
  const numbers = found?.[2]
    ?.trim()
    .split(/[\s,]+/)
    .map(Number);
  if (!numbers || numbers.length < 4 || numbers.length % 2 || !numbers.every(Number.isFinite))
    return undefined;
  const points = Array.from(
    { length: numbers.length / 2 },
    (_, i): PointPx => [numbers[2 * i] as number, numbers[2 * i + 1] as number],
  );
  return { points, closed: found?.[1] === 'polygon' };
}

function round(value: number): number {
  return Math.round(value * 100) / 100;
}
