import { FENBOARD, IN_HAND, SHOPS } from './finds.ts';
import { LABELS } from './labels.ts';
import { POCKET_GUIDE, REEDCUTTER, WILLOWHERB } from './lists.ts';
import { JUSAWIGOL, SAVUKUIKKA } from './magazines.ts';
import { ARCHIVE, PRESS } from './publisher.ts';
import type { Statement } from './statement.ts';

/** Every claim, source by source, each in the order of that source's own table. */
export const CLAIMS: readonly Statement[] = [
  ...ARCHIVE,
  ...PRESS,
  ...SAVUKUIKKA,
  ...JUSAWIGOL,
  ...REEDCUTTER,
  ...WILLOWHERB,
  ...POCKET_GUIDE,
  ...LABELS,
  ...FENBOARD,
  ...SHOPS,
  ...IN_HAND,
];
