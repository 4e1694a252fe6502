import { nameOfCode } from '../../catalogue/index.ts';
import type { Cells } from '../../contract/index.ts';
import { sayEdtf, sayList } from '../../evidence/index.ts';
import { capital } from './held.ts';

/** A stated weekday habit as a person says it: `Fridays in South Korea, retail, 1999 to 2003`. */
export function sayStated({ market, channel, weekdays = '', from = '', to = '' }: Cells): string {
  const names = weekdays.split('|').map((name) => `${capital(name.trim().toLowerCase())}s`);
  const where = market ? nameOfCode(market, 'region') : 'every market';
  return [`${sayList(names, 'or')} in ${where}`, channel, sayPeriod(from, to)]
    .filter(Boolean)
    .join(', ');
}

function sayPeriod(from: string, to: string): string {
  const [begins, ends] = [from, to].map((end) => (end === 'none' ? '' : sayEdtf(end)));
  if (begins && ends) return begins === ends ? begins : `${begins} to ${ends}`;
  if (begins) return `from ${begins} on`;
  return ends ? `until ${ends}` : '';
}
