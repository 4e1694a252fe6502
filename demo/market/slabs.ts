import type { Chance } from '../../src/maths/index.ts';
import { LABELS } from './labels.ts';
import { pick, serviceOf } from './population.ts';

/** A graded copy of the invented world. */
export interface Slab {
  readonly service: string;
  readonly label: string;
  readonly printing: string;
  readonly grade: string;
  readonly certificate: string;
  /** How readily it turns up: copies differ, which is what makes counting them hard. */
  readonly restless: number;
}

/** Every graded copy, with certificates that are used once. */
export function slabs(luck: Chance): readonly Slab[] {
  const used = new Set<string>();
  return LABELS.flatMap((label) =>
    Object.entries(label.copies).flatMap(([printing, copies]) =>
      Array.from({ length: copies }, () => {
        const service = serviceOf(label.service);
        return {
          service: label.service,
          label: label.label,
          printing,
          grade: service.grades[pick(service.shares, luck)] ?? '',
          certificate: freshCertificate(service.blocks, used, luck),
          restless: luck.gamma(0.7),
        };
      }),
    ),
  );
}

function freshCertificate(
  blocks: readonly (readonly [number, number, string])[],
  used: Set<string>,
  luck: Chance,
): string {
  for (;;) {
    const [from, to] = blocks[luck.below(blocks.length)] ?? [0, 0];
    const certificate = String(from + luck.below(to - from + 1));
    if (used.has(certificate)) continue;
    used.add(certificate);
    return certificate;
  }
}
