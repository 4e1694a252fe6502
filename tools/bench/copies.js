// Measures four copies in one warm thread one after the other, then in two at once, as `examine
// --jobs` does on two cores, and prints what both took.
/** @param {string} path below the compiled code */
const built = (path) => new URL(`../../dist/${path}`, import.meta.url);

const { MEASURING_ROOM_MB, openThread } = await import(built('host/index.js').href);

const entry = built('cli/examine/measure-thread.js');
const jobs = process.argv.slice(2).map((folder) => ({
  front: `${folder}/front.jpg`,
  back: `${folder}/back.jpg`,
  ...{ cardMm: [63, 88], dpi: null, raking: [] },
}));
const threads = [1, 2].map(() => openThread(entry, MEASURING_ROOM_MB));
/** @param {{ run(job: object): Promise<unknown>, close(): Promise<void> }} thread @param {readonly object[]} some */
const inTurn = async (thread, some) => {
  for (const job of some) await thread.run(job);
};
await Promise.all(threads.map((thread) => inTurn(thread, jobs.slice(0, 2))));
const began = performance.now();
await inTurn(threads[0], jobs);
const oneByOne = performance.now();
await Promise.all(
  threads.map((thread, k) =>
    inTurn(
      thread,
      jobs.filter((_, i) => i % 2 === k),
    ),
  ),
);
const twoAtOnce = performance.now();
await Promise.all(threads.map((thread) => thread.close()));
console.log(JSON.stringify({ oneByOneMs: oneByOne - began, twoAtOnceMs: twoAtOnce - oneByOne }));
