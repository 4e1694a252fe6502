import { parentPort, Worker } from 'node:worker_threads';

/** A thread that works on one task at a time and stays warm between them. */
export interface Thread<Task, Answer, Word = never> {
  /**
   * Works on a task, which is copied into the thread. Once `signal` is aborted the work is thrown
   * away with its thread, and a new one is made. Rejects with what the work threw, or `Cancelled`, at
   * once: the thread that is thrown away may take a moment to end. `hear` gets what the work tells on
   * its way.
   */
  run(task: Task, signal?: AbortSignal, hear?: (word: Word) => void): Promise<Answer>;
  /** Ends the thread for good, and the work it is at, which rejects. */
  close(): Promise<void>;
}

const CLOSED = 'the thread is closed';

interface Reply<Answer, Word> {
  readonly answer?: Answer;
  readonly error?: string;
  /** Told on the way: the answer is still to come. */
  readonly word?: Word;
}

/** The end of a task that is no longer wanted. */
export class Cancelled extends Error {
  override name = 'Cancelled';
}

/** A worker, and the failure that ended it while nobody was waiting for an answer. */
interface Live {
  readonly worker: Worker;
  failure?: Error;
}

/**
 * Room, MB, for what a thread that measures pictures soon drops: with the 48 that it has else, it
 * clears up so often that a face takes a third longer.
 */
export const MEASURING_ROOM_MB = 192;

/**
 * Starts a thread at a module that calls `answerTasks`; a `.ts` entry is for a source checkout.
 *
 * @param roomMb room for what it soon drops, MB, where it needs more than usual
 */
export function openThread<Task, Answer, Word = never>(
  entry: URL,
  roomMb?: number,
): Thread<Task, Answer, Word> {
  let live = launch(entry, roomMb);
  let stop: ((why: Error) => void) | undefined;
  let ending: Promise<unknown> = Promise.resolve();
  let closed = false;
  const run = (task: Task, signal?: AbortSignal, hear?: (word: Word) => void): Promise<Answer> => {
    if (closed) return Promise.reject(new Error(CLOSED));
    if (stop) throw new Error('the thread is at work');
    if (signal?.aborted) return Promise.reject(new Cancelled());
    if (live.failure) {
      const { failure } = live;
      live = launch(entry, roomMb);
      return Promise.reject(failure);
    }
    const used = live;
    const { answer, reject } = ask<Task, Answer, Word>(used.worker, task, hear);
    const cancel = () => reject(new Cancelled());
    signal?.addEventListener('abort', cancel);
    stop = reject;
    return answer
      .catch((error: unknown) => {
        if (error instanceof WorkFailed || closed) throw error;
        live = launch(entry, roomMb);
        ending = Promise.all([ending, used.worker.terminate()]);
        throw error;
      })
      .finally(() => {
        stop = undefined;
        signal?.removeEventListener('abort', cancel);
      });
  };
  const close = async () => {
    closed = true;
    stop?.(new Error(CLOSED));
    await Promise.all([live.worker.terminate(), ending]);
  };
  return { run, close };
}

/** What the work itself threw; the thread is none the worse for it. */
class WorkFailed extends Error {}

/** Sends a task and waits for its reply, for the worker's end, or for `reject`. */
function ask<Task, Answer, Word>(
  worker: Worker,
  task: Task,
  hear: (word: Word) => void = () => undefined,
) {
  let reject: (why: Error) => void = () => undefined;
  let answered: (reply: Reply<Answer, Word>) => void = () => undefined;
  const ended = () => reject(new Error('the thread ended unexpectedly'));
  const answer = new Promise<Answer>((resolve, rejectAnswer) => {
    reject = rejectAnswer;
    answered = ({ answer: value, error, word }) => {
      if (word !== undefined) hear(word);
      else if (error === undefined) resolve(value as Answer);
      else rejectAnswer(new WorkFailed(error));
    };
    worker.on('message', answered).once('error', reject).once('exit', ended);
    worker.postMessage(task);
  }).finally(() => {
    worker.off('message', answered).off('error', reject).off('exit', ended);
  });
  return { answer, reject: (why: Error) => reject(why) };
}

function launch(entry: URL, roomMb: number | undefined): Live {
  const room = roomMb ? { resourceLimits: { maxYoungGenerationSizeMb: roomMb } } : {};
  const worker = entry.pathname.endsWith('.ts')
    ? new Worker(new URL('./from-source.js', import.meta.url), { workerData: entry.href, ...room })
    : new Worker(entry, room);
  const live: Live = { worker };
  worker.on('error', (failure: Error) => {
    live.failure = failure;
  });
  worker.unref();
  return live;
}

/**
 * For the module that a thread starts at: answers each task with what `work` makes of it, which may
 * tell something on its way.
 */
export function answerTasks<Task, Answer, Word = never>(
  work: (task: Task, tell: (word: Word) => void) => Answer | Promise<Answer>,
): void {
  if (!parentPort) throw new TypeError('answerTasks is for a thread');
  const port = parentPort;
  port.on('message', async (task: Task) => {
    try {
      const answer = await work(task, (word) => port.postMessage({ word }));
      port.postMessage({ answer } satisfies Reply<Answer, Word>);
    } catch (error) {
      const words = error instanceof Error ? error.message : String(error);
      port.postMessage({ error: words } satisfies Reply<Answer, Word>);
    }
  });
}
