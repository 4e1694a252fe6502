import { openPool } from '../../host/index.ts';
import type { WORK } from './work.ts';

type Work = typeof WORK;
type Wish<What extends keyof Work> = Parameters<Work[What]>[0];
type Made<What extends keyof Work> = Work[What] extends (of: never) => Promise<infer To>
  ? To
  : never;

/** What a hand is asked. */
export interface HandTask {
  readonly what: keyof Work;
  readonly of: Wish<keyof Work>;
}

/** What it answers: what it made, or why a picture is none. */
export type HandAnswer = { readonly made: Made<keyof Work> } | { readonly fault: string };

/** A picture that cannot be shown; its message names the file and what is wrong with it. */
export class NoPicture extends Error {}

/** Threads that make pictures and documents side by side. */
export interface Hands {
  /** @throws NoPicture where a picture cannot be read */
  make<What extends keyof Work>(what: What, of: Wish<What>): Promise<Made<What>>;
  /** What comes of each of some things, in their order; no more of them at once than there are hands. */
  all<From, To>(some: readonly From[], act: (one: From, at: number) => Promise<To>): Promise<To[]>;
}

/** As many as two cores keep at work; each may hold a large picture. Judgement, no source. */
const MOST = 2;
const ENTRY = new URL(
  import.meta.url.endsWith('.ts') ? './hand-thread.ts' : './hand-thread.js',
  import.meta.url,
);

/** Does something with hands, which start when they are first needed and end with it. */
export async function withHands<T>(act: (hands: Hands) => Promise<T>): Promise<T> {
  const pool = openPool<HandTask, HandAnswer>(ENTRY, MOST);
  const hands: Hands = {
    async make<What extends keyof Work>(what: What, of: Wish<What>): Promise<Made<What>> {
      const answer = await pool.run({ what, of });
      if ('fault' in answer) throw new NoPicture(answer.fault);
      return answer.made as Made<What>;
    },
    all: (some, act) => together(some, pool.size, act),
  };
  try {
    return await act(hands);
  } finally {
    await pool.close();
  }
}

async function together<From, To>(
  some: readonly From[],
  most: number,
  act: (one: From, at: number) => Promise<To>,
): Promise<To[]> {
  const made: To[] = [];
  const left = some.entries();
  const lane = async () => {
    for (const [at, one] of left) made[at] = await act(one, at);
  };
  await Promise.all(Array.from({ length: most }, lane));
  return made;
}
