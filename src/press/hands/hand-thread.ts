import { answerTasks, PictureFault } from '../../host/index.ts';
import type { HandAnswer, HandTask } from './hands.ts';
import { WORK } from './work.ts';

answerTasks(async ({ what, of }: HandTask): Promise<HandAnswer> => {
  try {
    return { made: await WORK[what](of as never) };
  } catch (error) {
    if (error instanceof PictureFault) return { fault: error.message };
    throw error;
  }
});
