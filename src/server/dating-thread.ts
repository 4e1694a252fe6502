import { date } from '../dating/index.ts';
import type { Evidence } from '../evidence/index.ts';
import { answerTasks } from '../host/index.ts';
import type { Effort } from './dater.ts';

answerTasks((task: { readonly evidence: Evidence; readonly effort: Effort }) =>
  date(task.evidence, { effort: task.effort }),
);
