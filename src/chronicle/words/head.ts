import type { Name } from '../../catalogue/index.ts';
import type { ToldPrinting } from '../account/types.ts';
import { namesIn } from './names.ts';
import type { Telling } from './telling.ts';

/** What stands above the account of a printing: its title, and what tells more of it. */
export function headOf(
  { id, name, cells }: ToldPrinting,
  { account, phrases }: Telling,
): Pick<Name, 'title' | 'detail'> {
  const { title, detail } = namesIn(account, phrases).get(id) ?? name;
  const parts = [detail, cells.printed_name, cells.reading];
  return { title, detail: parts.filter((one) => one && one !== 'none').join(' · ') };
}
