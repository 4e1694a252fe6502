import { randomUUID } from 'node:crypto';
import {
  type Annotation,
  cardMapOf,
  type FaceAnswer,
  pixelOf,
  selectorOf,
} from '../../bench/index.ts';
import type { BenchMarkRequest } from '../../contract/index.ts';
import { now } from '../../host/index.ts';
import { Refused } from '../refusal.ts';

/** A mark that a hand adds or judges. */
export type MarkMade = Exclude<BenchMarkRequest, { do: 'remove' }>;

/** A mark as a web annotation of the picture `source`. Throws `Refused` where there is no outline to place it by. */
export function annotationOf(
  request: MarkMade,
  outline: FaceAnswer['outline'],
  source: string,
): Annotation {
  if (!outline?.sizeMm)
    throw new Refused('bad-request', 'Set the outline first: a mark has its place on the card.');
  const map = cardMapOf(outline.corners, outline.sizeMm, outline.lens);
  const adds = request.do === 'add';
  const points = adds ? request.points : around(...request.centre);
  const tag = { type: 'TextualBody', purpose: 'tagging', value: request.kind } as const;
  const body = adds
    ? ({ type: 'TextualBody', purpose: 'commenting', value: request.words } as const)
    : ({ type: 'TextualBody', purpose: 'classifying', value: request.word } as const);
  return {
    '@context': 'http://www.w3.org/ns/anno.jsonld',
    id: `urn:uuid:${randomUUID()}`,
    type: 'Annotation',
    motivation: adds ? 'tagging' : 'assessing',
    created: now(),
    body: body.value === '' ? [tag] : [tag, body],
    target: {
      source,
      selector: selectorOf({
        points: points.map((point) => pixelOf(map, point)),
        closed: adds ? request.closed : true,
      }),
    },
  };
}

/** A square of a millimetre, as a place to point at. */
function around(x: number, y: number) {
  return [
    [x - 0.5, y - 0.5],
    [x + 0.5, y - 0.5],
    [x + 0.5, y + 0.5],
    [x - 0.5, y + 0.5],
  ] as const;
}
