// Dates a dossier in a process of its own, with the compiled code, and prints what that took.
/** @param {string} folder whose compiled door is wanted */
const door = (folder) => import(new URL(`../../dist/${folder}/index.js`, import.meta.url).href);

const { date } = await door('dating');
const { readDossier } = await door('dossier');
const { filesOf } = await door('host');

const [folder = '', effort = 'refined'] = process.argv.slice(2);
const began = performance.now();
const { evidence, faults } = await readDossier(await filesOf(folder));
const read = performance.now();
const dating = date(evidence, { effort: effort === 'first' ? 'first' : 'refined' });
const dated = performance.now();
const answer = {
  printings: evidence.printings.length,
  claims: evidence.claims.length,
  faults: faults.length,
  readMs: read - began,
  dateMs: dated - read,
  fromDiskMs: dated,
  peakMb: process.resourceUsage().maxRSS / 1024,
  monteCarloError: dating.monte_carlo_error,
};
console.log(JSON.stringify(answer));
