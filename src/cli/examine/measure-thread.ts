import { answerTasks } from '../../host/index.ts';
import { answerOf } from './answer.ts';
import type { Job } from './job.ts';
import { measured } from './measure.ts';

answerTasks(async (job: Job) => answerOf(await measured(job)));
