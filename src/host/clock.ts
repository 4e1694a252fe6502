/** The time now as RFC 3339, in UTC. */
export function now(): string {
  return new Date().toISOString();
}
