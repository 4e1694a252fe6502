import { isoOf } from '../../src/evidence/index.ts';
import type { Answer } from './engine.ts';
import type { Simulated } from './types.ts';

/**
 * The printings of a dossier whose true day got least probability, each told in full: its claims
 * with how they were made, the truth, and what was answered. Texts sort worst first.
 */
export function worstOf(
  answer: Answer,
  simulated: Simulated,
  count: number,
  seed: number,
): string[] {
  const { truth } = simulated;
  const told = answer.printings.map((one) => {
    const day = isoOf(truth.days.get(one.id)!);
    return { one, day, p: one.days.find(([other]) => other === day)?.[1] ?? 0 };
  });
  const worst = told.sort((a, b) => a.p - b.p).slice(0, count);
  return worst.map(({ one, day, p }) => tell(simulated, one, day, p, seed));
}

function tell(
  { evidence, truth }: Simulated,
  one: Answer['printings'][number],
  day: string,
  p: number,
  seed: number,
): string {
  const release = truth.releases.find((r) => r.printings.includes(one.id))!;
  const claims = evidence.claims.filter((c) =>
    c.printings.some((id) => release.printings.includes(id)),
  );
  const lines = claims.map((claim) => {
    const { how, pen, right } = truth.claims.get(claim.row)!;
    const made = `${how}${pen ? ', pen' : ''}${right ? '' : ' ✗'}`;
    return `    ${claim.printings.join('|').padEnd(8)} ${claim.source.padEnd(10)} ${claim.property.padEnd(16)} ${claim.value.padEnd(24)} ${made}`;
  });
  const best = [...one.days].sort((a, b) => b[1] - a[1]).slice(0, 5);
  return [
    `p ${p.toFixed(6)}  seed ${seed} ${one.id} true ${day} (${release.product} ${release.market} ${release.edition} ${release.wave} ${release.channel}${release.coarse ? ', coarse' : ''})`,
    ...lines,
    `    answered ${best.map(([d, q]) => `${d} ${q.toFixed(3)}`).join(', ')}`,
  ].join('\n');
}
