const ROUNDS = 20_000_000;

/**
 * Milliseconds that this machine takes for a fixed loop of logarithms and sums, best of three; what
 * is measured beside it can be compared between machines.
 */
export function yardstick(): number {
  return Math.min(...[1, 2, 3].map(once));
}

function once(): number {
  const began = performance.now();
  let sum = 0;
  for (let i = 1; i <= ROUNDS; i += 1) sum += Math.log(i) / (1 + (i % 97));
  if (!(sum > 0)) throw new Error('the loop was not run');
  return performance.now() - began;
}
