import { describe, expect, it } from 'vitest';
import { type DossierFiles, readDossier } from '../../src/dossier/index.ts';
import { filesOf } from './files.ts';
import { simulate } from './simulate.ts';
import type { Style } from './types.ts';

function inMemory(files: ReadonlyMap<string, string>): DossierFiles {
  return {
    names: [...files.keys()],
    async *open(name) {
      yield new TextEncoder().encode(files.get(name)!);
    },
  };
}

describe('a simulated dossier as files', () => {
  it.each<Style>(['cards', 'software', 'sparse', 'copies'])(
    'of style %s is read without faults as the evidence that it was made from',
    async (style) => {
      const wish = { seed: 21, printings: 60, claims: 500, difficulty: 'hard', style } as const;
      const simulated = simulate(wish);
      const read = await readDossier(inMemory(filesOf(simulated, 'Simulated')));
      expect(read.faults).toEqual([]);
      const { evidence } = read;
      expect(evidence.claims).toHaveLength(simulated.evidence.claims.length);
      for (const part of ['printings', 'products', 'sources', 'orders', 'contents'] as const) {
        expect(evidence[part]).toMatchObject(simulated.evidence[part] as object[]);
      }
      const bare = ({
        row,
        printings,
        product,
        source,
        property,
        value,
      }: (typeof evidence.claims)[0]) => ({ row, printings, product, source, property, value });
      expect(evidence.claims.map(bare)).toEqual(simulated.evidence.claims.map(bare));
    },
  );
});
