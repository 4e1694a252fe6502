// Runs a command of the compiled program in a process of its own, and prints what that took as the
// last line: milliseconds by the clock and of processor time, threads included, and peak memory.
const { main } = await import(new URL('../../dist/cli/index.js', import.meta.url).href);

const code = await main(process.argv.slice(2), {});
const { user, system } = process.cpuUsage();
const took = {
  ms: performance.now(),
  cpuMs: (user + system) / 1000,
  peakMb: process.resourceUsage().maxRSS / 1024,
};
console.log(`\n${JSON.stringify(took)}`);
process.exitCode = code;
