import { type Kept, openDating, redate } from '../dating/index.ts';
import { answerTasks } from '../host/index.ts';
import type { DatingReply, DatingTask } from './dater.ts';

let kept: Kept | undefined;

answerTasks((task: DatingTask): DatingReply => {
  if ('change' in task) {
    const change = kept && redate(kept, task.change);
    return change ? { change } : {};
  }
  // What was kept is let go first, so that no thread holds two wholes.
  kept = undefined;
  const { evidence, effort } = task;
  const opened = openDating(evidence, { effort });
  kept = opened.kept;
  return { dating: opened.dating };
});
