// Dossiers with next to nothing in them, or with very much of one thing: no throw, and no guess.
import { describe, expect, it } from 'vitest';
import { date } from '../../src/dating/index.ts';
import { deepFreeze, dossier, type Sketch } from './dossier.ts';
import { unsound } from './sound.ts';

function dated(sketch: Sketch) {
  const evidence = deepFreeze(dossier(sketch));
  const answer = date(evidence, { effort: 'first' });
  expect(unsound(answer, evidence)).toEqual([]);
  return answer;
}

describe('a dossier', () => {
  it('without printings has an empty answer', () => {
    const answer = dated({ printings: [], sources: ['s'], said: [] });
    expect(answer).toMatchObject({ printings: [], order: [], first: [], sequences: [], leads: [] });
    expect(answer.sources).toMatchObject([{ id: 's', accuracy: null, claims: 0, derives: [] }]);
    expect(answer.monte_carlo_error).toBe(0);
  });

  it.each([
    ['without a claim', []],
    ['whose one claim bounds nothing', [['a', 's', '../..']]],
  ] as const)('%s leaves its printings open', (_, said) => {
    for (const one of dated({ printings: ['a', 'b'], sources: ['s'], said }).printings) {
      expect(one).toMatchObject({ best: null, state: 'open', interval95: null, days: [] });
      expect(one).toMatchObject({ p_best: 0, p_interval: 0 });
      expect(one.why).not.toBe('');
    }
  });

  it('with one claim believes it for its printing, and guesses no day for another', () => {
    const { printings } = dated({
      printings: ['a', 'b'],
      sources: ['s'],
      said: [['a', 's', '1999-03-05']],
    });
    expect(printings[0]).toMatchObject({ best: '1999-03-05', state: 'day' });
    expect(printings[0]!.p_best).toBeGreaterThan(0.5);
    expect(printings[1]).toMatchObject({ state: 'bounded', claims: [] });
    // A window of six years: no day of it stands out.
    expect(printings[1]!.p_best).toBeLessThan(0.01);
  });

  it('is no surer of a day that one source repeats 200 times', () => {
    const said = (n: number) => Array.from({ length: n }, () => ['a', 's', '1999-03-05'] as const);
    const [one, many] = [1, 200].map((n) =>
      dated({ printings: ['a'], sources: ['s'], said: said(n) }),
    );
    // The statement, not the row, is the unit of evidence: the same sum, the same chance.
    expect(many!.printings[0]!.p_best).toBeCloseTo(one!.printings[0]!.p_best, 6);
    expect(many!.printings[0]!.claims).toHaveLength(200);
  });

  it.each([
    ['0005-06-17', '0005-06-17'],
    ['9990-05-14', '9990-05-14'],
  ])('may lie far off, as at %s', (value, best) => {
    const { printings } = dated({ printings: ['a'], sources: ['s'], said: [['a', 's', value]] });
    expect(printings[0]).toMatchObject({ best, state: 'day' });
  });
});
