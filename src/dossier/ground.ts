import type { Surroundings } from './cell-types.ts';
import type { FaultList } from './faults.ts';
import type { PrintingIds } from './printing-ids.ts';
import type { ReadTable } from './read-table.ts';

/** What evidence is made of. */
export interface Ground {
  readonly tables: ReadonlyMap<string, ReadTable>;
  readonly printings: PrintingIds;
  readonly around: Surroundings;
  readonly faults: FaultList;
}
