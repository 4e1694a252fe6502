import { answerTasks } from '../../host/index.ts';
import {
  type BackTest,
  backTest,
  type PriceGround,
  type Prices,
  pricesOf,
} from '../../market/index.ts';

/** What the thread for prices answers. */
export interface PricesReply {
  readonly prices: Prices;
  readonly back: BackTest;
}

answerTasks(
  (ground: PriceGround): PricesReply => ({ prices: pricesOf(ground), back: backTest(ground) }),
);
