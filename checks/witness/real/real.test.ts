import { describe, expect, it } from 'vitest';
import { majority } from '../../simulator/majority.ts';
import { loadReal, REAL_SETS } from './load.ts';
import { scoreReal } from './score.ts';

/** Versions, claims, and the share that plain counting dates as the maker does, in per cent. */
const EXPECTED = { perl: [215, 644, 97], tz: [150, 451, 34], node: [113, 244, 84] } as const;

describe.each(REAL_SETS)('real release days of %s', (name) => {
  const { evidence, truth } = loadReal(name);
  const [versions, claims, counted] = EXPECTED[name];

  it('are as many as were made', () => {
    expect(evidence.printings).toHaveLength(versions);
    expect(evidence.claims).toHaveLength(claims);
    expect([...truth.keys()].sort()).toEqual(evidence.printings.map(({ id }) => id).sort());
  });

  it('refer only to what is there, two sources or more for each version', () => {
    const ids = new Set(evidence.sources.map(({ id }) => id));
    expect(evidence.claims.every(({ source }) => ids.has(source))).toBe(true);
    for (const { id } of evidence.printings) {
      const told = evidence.claims.filter(({ printings }) => printings[0] === id);
      expect(new Set(told.map(({ source }) => source)).size).toBeGreaterThanOrEqual(2);
    }
  });

  it('are as hard for a majority vote as when they were made', () => {
    const score = scoreReal(majority(evidence), truth);
    expect(Math.floor(100 * score.exact)).toBe(counted);
  });
});
