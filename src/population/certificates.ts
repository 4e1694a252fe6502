import { isoOf } from '../evidence/index.ts';
import type { Block, PrintingCount, Seen } from './types.ts';

/**
 * The dated block that a certificate number lies in; where several do, the one that ended first.
 * Numbers of like length compare by their letters, others by their value.
 */
export function blockOf(
  blocks: readonly Block[],
  service: string,
  certificate: string,
): Block | undefined {
  const holding = blocks.filter(
    (block) => block.service === service && isWithin(certificate, block.from, block.to),
  );
  return holding.sort((a, b) => a.lastDay - b.lastDay)[0];
}

function isWithin(certificate: string, from: string, to: string): boolean {
  const [one, low, high] = [certificate, from, to].map((text) =>
    /^(\D*)(\d+)(.*)$/.exec(text.trim()),
  );
  if (!one || !low || !high || one[1] !== low[1]) return false;
  const value = BigInt(one[2] as string);
  return value >= BigInt(low[2] as string) && value <= BigInt(high[2] as string);
}

/**
 * The release bound that certificates give: a printing of which a certificate of a dated block was
 * seen was out by the last day of the block's period. What dating calls `seen-by`.
 */
export function seenByOf(
  blocks: readonly Block[],
  seen: readonly Seen[],
): PrintingCount['seen_by'] {
  let best: { block: Block; one: Seen } | undefined;
  for (const one of seen) {
    if (one.certificate === '') continue;
    const block = blockOf(blocks, one.service, one.certificate);
    if (block === undefined || !Number.isFinite(block.lastDay)) continue;
    if (best === undefined || block.lastDay < best.block.lastDay) best = { block, one };
  }
  if (best === undefined) return null;
  const { block, one } = best;
  return { day: isoOf(block.lastDay), service: one.service, certificate: one.certificate };
}
