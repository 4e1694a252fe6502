export {
  type Clock,
  clockOf,
  type DeadlineRow,
  type OpenDeadline,
  type UnclearDeadline,
} from './deadlines/deadlines.ts';
export { type LandedGround, landedCosts } from './landed/landed.ts';
export type * from './landed/types.ts';
export { type Currency, digitsOf, type Money } from './money/currencies.ts';
export { type RateRow, type Rates, ratesOf } from './money/rates.ts';
export { type BackTest, backTest } from './price/back-test.ts';
export { type Prices, pricesOf } from './price/predict.ts';
export type * from './price/types.ts';
export { type LeftOut, type SaleRow, type UsableSales, usableSales } from './price/usable.ts';
