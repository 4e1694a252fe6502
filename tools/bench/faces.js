// Measures faces one after the other in a process of its own, with the compiled code, and prints the
// milliseconds of processor time of each once it is decoded; the first ten are passed over.
/** @param {string} folder whose compiled door is wanted */
const door = (folder) => import(new URL(`../../dist/${folder}/index.js`, import.meta.url).href);

const { faceOf } = await door('bench');
const { decodePicture } = await door('host');

const WARM = 10;
const pictures = await Promise.all(process.argv.slice(2).map((file) => decodePicture(file)));
/** @param {unknown} picture */
const measure = (picture) => faceOf(picture, { sizeMm: [63, 88], dpi: null, raking: [] });
for (let k = 0; k < WARM; k++) measure(pictures[k % pictures.length]);
const took = pictures.map((picture) => {
  const before = process.cpuUsage();
  measure(picture);
  const { user, system } = process.cpuUsage(before);
  return (user + system) / 1000;
});
console.log(JSON.stringify(took));
