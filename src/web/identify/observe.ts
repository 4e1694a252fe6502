import { sayTrait } from '../../catalogue/index.ts';
import type { CopyReading, IdentifyAnswer, WireChange } from '../../contract/index.ts';
import type { Step } from '../wire/index.ts';

/** Something seen on a card. */
export interface Sight {
  readonly trait: string;
  readonly value: string;
  readonly sees: string;
}

const FILE = 'desk/observations.csv';

/** Readings of a trait that its owner saw and that can be changed here. */
export function ownReadings(
  { readings }: Pick<IdentifyAnswer, 'readings'>,
  trait: string,
): readonly CopyReading[] {
  const plain = (name: string) => sayTrait(name).toLowerCase();
  return readings.filter((one) => one.row !== null && plain(one.trait) === plain(trait));
}

/** Notes what was seen on a copy, in the place of what was noted of that trait before. */
export function notingStep(copy: string, sight: Sight, before: readonly CopyReading[]): Step {
  const [first, ...others] = before;
  const noted = { copy, trait: sight.trait, value: sight.value, sees: sight.sees };
  const change: WireChange =
    first?.cells && first.row !== null
      ? {
          ...{ file: FILE, op: 'replace', row: first.row, before: first.cells },
          after: { ...first.cells, ...noted, trait: first.cells.trait ?? sight.trait },
        }
      : { file: FILE, op: 'add', after: { ...noted, note: '' } };
  return {
    label: `Note ${sayTrait(sight.trait)} on ${copy}: ${sight.value}`,
    changes: [change, ...removals(others)],
  };
}

/** Takes back what was noted of a trait. */
export function takingBackStep(copy: string, noted: readonly CopyReading[]): Step {
  const what = sayTrait(noted[0]?.trait ?? '');
  return { label: `Take back ${what} on ${copy}`, changes: removals(noted) };
}

function removals(noted: readonly CopyReading[]): WireChange[] {
  return [...noted]
    .sort((a, b) => (b.row ?? 0) - (a.row ?? 0))
    .flatMap(({ row, cells }) =>
      row === null || cells === null ? [] : [{ file: FILE, op: 'remove', row, before: cells }],
    );
}
