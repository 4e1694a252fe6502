import { dayFrom } from '../../evidence/index.ts';
import type { Figure, FigureValue } from '../figures/types.ts';

/** A change that is seen at this many digits is told; a smaller one is none. */
const DIGITS = 2;

/** How far a figure moved, in English; empty where nothing of it moved that is shown. */
export function movedBy(before: Figure | null, after: Figure | null): string {
  if (before === null) return 'told for the first time';
  if (after === null) return 'no longer told';
  const [a, b] = [before.value, after.value];
  if (a.is !== b.is) return `${plain(a)} → ${plain(b)}`;
  const parts = [mainMove(a, b), chanceMove(a, b)].filter((part) => part !== '');
  return parts.join('; ');
}

function mainMove(a: FigureValue, b: FigureValue): string {
  if (a.is === 'release' && b.is === 'release' && a.best !== null && b.best !== null) {
    const days = Math.abs(dayFrom(b.best) - dayFrom(a.best));
    if (days > 0)
      return `release moved by ${days} ${days === 1 ? 'day' : 'days'}, ${a.best} → ${b.best}`;
  }
  const [was, is] = [plain(a), plain(b)];
  return was === is ? '' : `${was} → ${is}`;
}

function chanceMove(a: FigureValue, b: FigureValue): string {
  if (!('p' in a) || !('p' in b)) return '';
  const [was, is] = [a.p.toFixed(DIGITS), b.p.toFixed(DIGITS)];
  return was === is ? '' : `p ${was} → ${is}`;
}

/** A figure's value as short as can be. */
function plain(value: FigureValue): string {
  switch (value.is) {
    case 'release':
      return value.edtf || 'open';
    case 'count':
      return `${Math.round(value.count)}${value.interval ? ` (${value.interval.map(Math.round).join(' to ')})` : ''}`;
    case 'share':
      return `${(100 * value.share).toFixed(1)} %`;
    case 'price':
      return `${value.amount.toFixed(DIGITS)} ${value.currency}`;
    case 'place':
      return `place ${value.place} of ${value.of}`;
    case 'printing':
      return value.id;
  }
}
