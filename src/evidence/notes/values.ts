import { endsOf, type Part } from './dates/part.ts';
import type { TimePhrase } from './dates/phrases-of-time.ts';

function markOf(time: TimePhrase): string {
  if (time.about && time.unsure) return '%';
  return time.about ? '~' : time.unsure ? '?' : '';
}

/** The EDTF of a time phrase, its parts settled and their years filled in. */
export function edtfOf(time: TimePhrase, parts: readonly Part[]): string {
  const mark = markOf(time);
  const first = endsOf(parts[0]!);
  if (time.last !== undefined) {
    const last = endsOf(time.last);
    return `${first[0]}${mark}/${last[1]}${mark}`;
  }
  const others = time.or ? [time.or] : parts.slice(1);
  if (others.length > 0) {
    const days = [parts[0]!, ...others].map((part) => {
      const [begin, end] = endsOf(part);
      return begin === end ? `${begin}${mark}` : `${begin}${mark}..${end}${mark}`;
    });
    return `[${[...new Set(days)].sort().join(',')}]`;
  }
  if (first[0] !== first[1]) return `${first[0]}${mark}/${first[1]}${mark}`;
  return `${first[0]}${mark}`;
}
