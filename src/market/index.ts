export {
  type Clock,
  clockOf,
  type DeadlineRow,
  type OpenDeadline,
  type UnclearDeadline,
} from './deadlines/deadlines.ts';
export { type Batches, bestBatches } from './decide/batches.ts';
export { decide } from './decide/decide.ts';
export { bestPurchases, type Offer, type Purchases, type Want } from './decide/purchases.ts';
export type * from './decide/types.ts';
export { type Way, waysOf } from './decide/ways.ts';
export { deadlinesCalendar } from './desk/calendar.ts';
export { type DeskDecisions, decisionsOn } from './desk/decisions.ts';
export { type Listing, type Weighed, weighListing } from './desk/listing.ts';
export { type Supposed, supposing } from './desk/supposing.ts';
export * from './desk/types.ts';
export { type LandedGround, landedCosts } from './landed/landed.ts';
export type * from './landed/types.ts';
export { type Currency, digitsOf, type Money, unitsIn } from './money/currencies.ts';
export { type RateRow, type Rates, ratesOf, type UsedRate } from './money/rates.ts';
export { type BackTest, backTest } from './price/back-test.ts';
export { chanceBelow } from './price/next-sale.ts';
export { type Prices, pricesOf } from './price/predict.ts';
export type * from './price/types.ts';
export { type LeftOut, type SaleRow, type UsableSales, usableSales } from './price/usable.ts';
