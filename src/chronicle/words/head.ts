import type { Name } from '../../catalogue/index.ts';
import type { ToldPrinting } from '../account/types.ts';
import type { Telling } from './telling.ts';

/** What stands above the account of a printing: its title, and what tells more of it. */
export function headOf(
  { id, cells }: ToldPrinting,
  { named }: Telling,
): Pick<Name, 'title' | 'detail'> {
  const { title, detail } = named(id);
  const parts = [detail, cells.printed_name, cells.reading];
  return { title, detail: parts.filter((one) => one && one !== 'none').join(' · ') };
}
