import type { Paper } from '../chronicle/index.ts';

/** A document in the roomiest setting that takes one page; where none does, in the densest. */
export async function settled<T extends { readonly pages: number }>(
  { settings: [roomiest, ...denser] }: { readonly settings: readonly Paper[] },
  set: (paper: Paper) => Promise<T>,
): Promise<T> {
  let made = await set(roomiest as Paper);
  for (const next of denser) {
    if (made.pages === 1) break;
    made = await set(next);
  }
  return made;
}
