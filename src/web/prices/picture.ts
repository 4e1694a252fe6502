import type { PrintingPrices, SaleMark, WirePrice } from '../../contract/index.ts';
import { type Scale, xOf } from '../draw/index.ts';

/** A line at a round amount. */
export interface AmountTick {
  readonly y: number;
  readonly amount: number;
}

/** A sale as a mark. */
export interface Placed {
  readonly x: number;
  readonly y: number;
  readonly sale: SaleMark;
  /** It is of the cell that is chosen. */
  readonly own: boolean;
}

/** All that is drawn of a printing's prices. */
export interface PricePicture {
  readonly scale: Scale;
  readonly ticks: readonly AmountTick[];
  readonly marks: readonly Placed[];
  /** The median over time, the band round it, and where the next sale is expected, as paths. */
  readonly median: string;
  readonly band: string;
  readonly next: {
    readonly x: number;
    readonly low: number;
    readonly mid: number;
    readonly high: number;
  };
}

/** Days that the interval of the next sale holds for. */
const AHEAD = 75;
/** How many standard deviations the middle 80 % of a normal reach. */
const EIGHTY = 1.2816;

const isCell = (a: Pick<WirePrice, 'service' | 'grade'>, b: Pick<WirePrice, 'service' | 'grade'>) =>
  a.service === b.service && a.grade === b.grade;

/**
 * Lays out a printing's prices on a scale of days and one of logarithms. Back in time the median
 * follows the market's course alone, and the band widens by what is not known of it.
 */
export function pictureOf(
  { prices, sales, course, day }: PrintingPrices,
  chosen: WirePrice,
  width: number,
  height: number,
): PricePicture {
  const shown = sales.filter(({ home, day: on }) => home !== null && on !== null);
  const days = shown.map((sale) => sale.day as number);
  const from = Math.min(day - 180, ...days) - 12;
  const scale = { from, to: Math.max(day, ...days) + AHEAD + 12, width };
  const own = prices.find((one) => isCell(one, chosen)) ?? chosen;
  const [low, high] = own.interval80;
  const amounts = [low, high, ...shown.map(({ home }) => home as number)];
  const bottom = Math.log(Math.min(...amounts)) - 0.12;
  const top = Math.log(Math.max(...amounts)) + 0.12;
  const y = (log: number) => height * (1 - (log - bottom) / (top - bottom));
  const level = Math.log(own.price);
  const half = Math.log(high / low) / 2;
  const steps = course.filter(({ daysBack }) => day - daysBack >= from);
  const at = (daysBack: number) => xOf(scale, day - daysBack).toFixed(1);
  const clamp = (value: number) => Math.max(0, Math.min(height, value)).toFixed(1);
  const edge = (sign: 1 | -1) =>
    steps.map(({ daysBack, log, sd }) => {
      const wide = Math.hypot(half, EIGHTY * sd);
      return `${at(daysBack)} ${clamp(y(level + log + sign * wide))}`;
    });
  return {
    scale,
    ticks: ticksBetween(bottom, top).map((one) => ({ amount: one, y: y(Math.log(one)) })),
    marks: shown.map((sale) => ({
      x: xOf(scale, sale.day as number),
      y: y(Math.log(sale.home as number)),
      sale,
      own: isCell(sale, chosen),
    })),
    median: `M${steps.map(({ daysBack, log }) => `${at(daysBack)} ${clamp(y(level + log))}`).join('L')}`,
    band: `M${[...edge(1), ...edge(-1).reverse()].join('L')}z`,
    next: {
      x: xOf(scale, day + AHEAD / 2),
      low: y(Math.log(low)),
      mid: y(level),
      high: y(Math.log(high)),
    },
  };
}

/** Round amounts (1, 2, 5 and their tens) between two logarithms. */
export function ticksBetween(bottom: number, top: number): number[] {
  const ticks: number[] = [];
  for (let power = Math.floor(bottom / Math.LN10); power <= Math.ceil(top / Math.LN10); power++)
    for (const step of [1, 2, 5]) {
      const amount = step * 10 ** power;
      const log = Math.log(amount);
      if (log > bottom && log < top) ticks.push(Number(amount.toPrecision(1)));
    }
  return ticks;
}
