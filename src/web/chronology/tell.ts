import { sayList } from '../../evidence/index.ts';
import type { DatedPrinting } from '../view/index.ts';
import { count } from '../words/index.ts';

/** What the drawing of a lane shows, in words for those who do not see it. */
export function tellLane(dated: DatedPrinting | undefined): string {
  if (!dated) return '';
  const slips = dated.claims.filter((claim) => claim.slip).length;
  const agree = dated.claims.filter((claim) => !claim.slip && claim.p_right >= 0.5).length;
  const parts = [
    agree > 0 ? `${count(agree, 'claim agrees', 'claims agree')}` : '',
    slips > 0 ? count(slips, 'slip') : '',
    dated.modes.length > 1 ? `${dated.modes.length} separate peaks` : '',
  ].filter(Boolean);
  return parts.length > 0 ? `${sayList(parts)}.` : 'No claim.';
}
