import { isHint } from '../hints/hints.ts';
import type { Relief } from '../relief/types.ts';
import type { Examination } from './types.ts';

type Faces = Pick<Examination, 'front' | 'back'>;

/**
 * What a set under a moved lamp adds to the front: its marks, in place of what one low lamp only
 * hinted at, and that they were looked for. A set that told nothing adds nothing.
 */
export function withRelief(faces: Faces, relief: Relief | null): Faces {
  if (!relief?.slopes) return faces;
  const { front, back } = faces;
  return {
    front: {
      ...front,
      defects: [...front.defects.filter((one) => !isHint(one)), ...relief.defects],
      looks: [...front.looks, 'lamps'],
    },
    back,
  };
}
