/** Works off jobs one after the other; the next one waits also for what a job leaves under way. */
export interface Queue {
  /** Answers what the job answers; its `written`, where it has one, is waited for before the next. */
  run<T>(job: () => Promise<T>): Promise<T>;
  /** Waits for all that was asked for; afterwards `run` throws. */
  end(): Promise<void>;
}

/** A queue that nothing waits in yet. */
export function inTurn(): Queue {
  let last: Promise<unknown> = Promise.resolve();
  let ended = false;
  return {
    run: (job) => {
      if (ended) throw new Error('the dossier is closed');
      const answer = last.then(job);
      last = answer.then(leftover, () => undefined);
      return answer;
    },
    end: async () => {
      ended = true;
      await last;
    },
  };
}

/** A job's own failure goes to whoever asked for it, not to the next in turn. */
async function leftover(answer: unknown): Promise<void> {
  if (answer !== null && typeof answer === 'object' && 'written' in answer) {
    await Promise.allSettled([answer.written]);
  }
}
