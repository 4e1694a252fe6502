import type { WireChange, WireConflict } from '../../contract/index.ts';
import type { Step } from '../wire/index.ts';

function sameChange(a: WireChange, b: WireChange): boolean {
  return JSON.stringify(a) === JSON.stringify(b);
}

/** The step once more, made from what the rows hold now. */
export function again(step: Step, conflicts: readonly WireConflict[]): Step {
  const changes = step.changes.map((change): WireChange | undefined => {
    const conflict = conflicts.find((one) => sameChange(one.change, change));
    if (!conflict) return change;
    if (conflict.now) return { ...change, before: conflict.now };
    return change.after ? { file: change.file, op: 'add', after: change.after } : undefined;
  });
  return { label: step.label, changes: changes.filter((change) => change !== undefined) };
}
