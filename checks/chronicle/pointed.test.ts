import { expect, it } from 'vitest';
import { placesOn, type ToldTrait } from '../../src/chronicle/index.ts';

const trait = (
  name: string,
  boxMm: readonly [number, number, number, number] | null,
  face: 'front' | 'back' = 'front',
): ToldTrait => ({
  trait: name,
  value: 'red',
  sees: 'eye',
  region: boxMm === null ? null : { face, boxMm },
});

it('points at each place of a face once, from the top', () => {
  const traits = [
    trait('stamp', [44, 70, 58, 82]),
    trait('line 3', [6, 62, 57, 66]),
    trait('ink', [44, 70, 58, 82]),
    trait('back line', [1, 2, 3, 4], 'back'),
    trait('weight', null),
  ];
  const names = (face: 'front' | 'back') =>
    placesOn(traits, face).map((place) => place.traits.map((one) => one.trait));
  expect(names('front')).toEqual([['line 3'], ['stamp', 'ink']]);
  expect(names('back')).toEqual([['back line']]);
});
