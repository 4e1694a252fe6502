import { count } from './numbers.ts';

/** That the collector holds copies of a printing, in words; `copies` or `perhaps` is at least 1. */
export function sayHeld({ copies, perhaps }: { copies: number; perhaps: number }): string {
  if (copies === 0)
    return `you may hold ${perhaps === 1 ? 'a copy' : count(perhaps, 'copy', 'copies')}`;
  const sure = `you hold ${copies === 1 ? 'a copy' : count(copies, 'copy', 'copies')}`;
  return perhaps === 0 ? sure : `${sure}, perhaps ${copies + perhaps}`;
}

/** Words with a capital at their head. */
export function capital(words: string): string {
  return words.charAt(0).toUpperCase() + words.slice(1);
}
