import type { Account } from '../account/types.ts';
import type { Figure } from '../figures/types.ts';
import { tellDay, tellEdtf } from './days.ts';
import { namesIn } from './names.ts';
import { tellAmount, tellCount, tellP, tellShare } from './numbers.ts';
import type { Phrases } from './types.ts';

/** A figure in words with its unit, without its "as of". */
export function tellFigure(figure: Figure, account: Account, phrases: Phrases): string {
  const { value, unit } = figure;
  switch (value.is) {
    case 'release':
      if (value.best === null || value.state !== 'day') return tellEdtf(phrases, value.edtf);
      return tellDay(phrases, value.best);
    case 'count': {
      const count = tellCount(phrases, value.count);
      const said = unit === null ? count : phrases.units[unit](count, value.count === 1);
      return value.how === 'counted' ? said : phrases.vague.about(said);
    }
    case 'share':
      return tellShare(phrases, value.share);
    case 'price':
      return phrases.vague.about(tellAmount(phrases, value.amount, value.currency));
    case 'place':
      return tellCount(phrases, value.place);
    case 'printing':
      return namesIn(account, phrases).get(value.id)?.short ?? value.id;
  }
}

/** What makes a figure doubtful, in words: its probability or interval; empty where it was counted. */
export function tellDoubt({ value }: Figure, phrases: Phrases): string {
  switch (value.is) {
    case 'release':
      return value.state === 'day' ? tellP(phrases, value.p) : tellP(phrases, value.pInterval);
    case 'count':
      return value.interval === null ? '' : countInterval(value.interval, phrases);
    case 'share':
      return value.interval === null ? '' : shareInterval(value.interval, phrases);
    case 'price': {
      const [low, high] = value.interval80.map((one) => tellAmount(phrases, one, value.currency));
      return phrases.interval(low ?? '', high ?? '');
    }
    case 'place':
    case 'printing':
      return tellP(phrases, value.p);
  }
}

/** A figure with its unit and the day that it holds for. */
export function tellFigureAsOf(figure: Figure, account: Account, phrases: Phrases): string {
  const said = tellFigure(figure, account, phrases);
  return figure.asOf === null ? said : phrases.asOf(said, tellEdtf(phrases, figure.asOf));
}

/** An interval of counts in words, rounded outwards. */
export function countInterval([low, high]: readonly [number, number], phrases: Phrases): string {
  return phrases.interval(tellCount(phrases, Math.floor(low)), tellCount(phrases, Math.ceil(high)));
}

/** An interval of shares in words. */
export function shareInterval([low, high]: readonly [number, number], phrases: Phrases): string {
  return phrases.interval(tellShare(phrases, low), tellShare(phrases, high));
}
