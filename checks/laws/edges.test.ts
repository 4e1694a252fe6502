import { describe, expect, it } from 'vitest';
import { date } from '../../src/dating/index.ts';
import { dossier, type Said, type Sketch } from './dossier.ts';

const dated = (sketch: Sketch, seed = 1) => date(dossier(sketch), { effort: 'first', seed });

describe('at the edges of what is stated', () => {
  it('believes three sources that agree on one day for two products', () => {
    const said = ['s', 't', 'u'].flatMap((source): Said[] => [
      ['a', source, '1999-03-05'],
      ['b', source, '1999-03-05'],
    ]);
    // "Filled in" and "copied" explain each other in a circle; nothing pays for the day's choice.
    const { printings } = dated({ printings: ['a', 'b'], sources: ['s', 't', 'u'], said });
    expect(printings[0]!.p_best).toBeGreaterThan(0.5);
  });

  it('leaves the weekday open where only months are stated', () => {
    // Days of a block are spread by the weekdays of the last sweep, not by their average.
    const said: Said[] = [
      ['a', 's', '1999-05'],
      ['b', 's', '2003-08'],
    ];
    const seeds = [1, 2].map((seed) =>
      dated({ printings: ['a', 'b'], sources: ['s'], said }, seed),
    );
    for (const { printings } of seeds) expect(printings[0]!.p_best).toBeLessThan(0.06);
  });

  it('puts printings in the stated order where none has a claim', () => {
    const { order } = dated({ printings: ['a', 'b'], sources: [], said: [], orders: ['b<a'] });
    expect(order).toEqual(['b', 'a']);
  });

  it.each(['0000-01-01', '-0500', 'Y17000'])('answers a claim of %s', (value) => {
    dated({ printings: ['a'], sources: ['s'], said: [['a', 's', value]] });
  });

  it('keeps to an open interval that is all that is stated', () => {
    const { printings } = dated({
      printings: ['a'],
      sources: ['s'],
      said: [['a', 's', '1999-03-05/..']],
    });
    expect(printings[0]!.best! >= '1999-03-05').toBe(true);
  });
});
