/** Tells all who listen. */
export interface Teller<T> {
  tell(message: T): void;
  /** Listens until the answer is called. */
  listen(hear: (message: T) => void): () => void;
}

/** A teller that nobody listens to yet. */
export function teller<T>(): Teller<T> {
  const listeners = new Set<(message: T) => void>();
  return {
    tell: (message) => {
      for (const hear of [...listeners]) hear(message);
    },
    listen: (hear) => {
      listeners.add(hear);
      return () => void listeners.delete(hear);
    },
  };
}
