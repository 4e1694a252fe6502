import type { IdentificationKey, Identified, Known, Seen } from '../../catalogue/index.ts';
import type {
  Batches,
  Decision,
  Offer,
  PriceGround,
  Prices,
  Purchases,
  Tier,
  Want,
} from '../../market/index.ts';

/** What the desk's thread is asked for, each without a file or a clock. */
export type DeskTask =
  | { readonly do: 'prices'; readonly ground: PriceGround }
  | {
      readonly do: 'plans';
      readonly decisions: readonly Pick<Decision, 'copy' | 'options'>[];
      readonly tiers: readonly Tier[];
      readonly wants: readonly Want[];
      readonly offers: readonly Offer[];
      readonly budget: number | null;
    }
  | { readonly do: 'identify'; readonly known: Known; readonly seen: Seen }
  | { readonly do: 'key'; readonly known: Known };

/** What it answers, by the name of the task. */
export interface DeskReply {
  readonly prices?: Prices;
  readonly identified?: Identified;
  readonly key?: IdentificationKey;
  readonly plans?: { readonly batches: Batches; readonly purchases: Purchases };
}
