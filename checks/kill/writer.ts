import { writeSync } from 'node:fs';
import { doorsOf } from '../../src/server/index.ts';
import { openStore } from '../../src/store/index.ts';
import { changesOf, isUndo } from './sequence.ts';

/**
 * Makes steps without end in the folder given, and prints the number of each as soon as it is
 * acknowledged, to be killed at any moment.
 */
const [folder = '', round = ''] = process.argv.slice(2);
const opened = await openStore(folder, doorsOf(folder));
if (!opened.ok) throw new Error(opened.reason);
for (let step = 0; ; step++) {
  const outcome = isUndo(step)
    ? await opened.store.undo()
    : await opened.store.change(`step ${round}-${step}`, changesOf(round, step));
  if (outcome.conflicts.length > 0) throw new Error('nobody else writes here');
  writeSync(1, `${step}\n`);
}
