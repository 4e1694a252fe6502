// Measures one large picture in a process of its own, then follows an outline that a hand moves, and
// prints what that took (a step in processor time) and the most memory that the process ever held.
/** @param {string} folder whose compiled door is wanted */
const door = (folder) => import(new URL(`../../dist/${folder}/index.js`, import.meta.url).href);

const { bordersAlong, faceOf, outlineByHand } = await door('bench');
const { decodePicture } = await door('host');

const STEPS = 30;
const [file = ''] = process.argv.slice(2);
const known = { sizeMm: [63, 88], dpi: null, raking: [] };
const began = performance.now();
const picture = await decodePicture(file);
const decoded = performance.now();
const { outline } = faceOf(picture, known);
const measured = performance.now();
const peakMb = process.resourceUsage().maxRSS / 1024;
const steps = Array.from({ length: STEPS }, (_, k) => {
  const before = process.cpuUsage();
  const [[x, y], ...others] = outline.corners;
  const corners = [[x + k, y], ...others];
  bordersAlong(picture, outlineByHand(picture, corners, known), known);
  const { user, system } = process.cpuUsage(before);
  return (user + system) / 1000;
});
const answer = {
  megapixels: (picture.width * picture.height) / 1e6,
  decodeMs: decoded - began,
  measureMs: measured - decoded,
  stepMs: steps.sort((a, b) => a - b)[STEPS / 2],
  peakMb,
};
console.log(JSON.stringify(answer));
