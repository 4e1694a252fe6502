import { mkdtempSync, rmSync } from 'node:fs';
import { cpus, tmpdir } from 'node:os';
import { join } from 'node:path';
import { parseArgs } from 'node:util';
import { COPIES_AIM, timedCopies, timedFaces, WHOLE_AIM, wholePhoto } from './pictures.ts';
import { PUBLISH_AIM, published } from './publish.ts';
import { timed } from './run.ts';
import { sequencedByJags, sequencedHere } from './sequence.ts';
import {
  edited,
  LARGE,
  measured,
  REDATE_AIM,
  redated,
  type Size,
  USUAL,
  written,
} from './sizes.ts';
import { yardstick } from './yardstick.ts';

const { values } = parseArgs({
  options: {
    large: { type: 'boolean', default: false },
    pictures: { type: 'boolean', default: false },
    publish: { type: 'boolean', default: false },
  },
});
const DEMO = join(import.meta.dirname, '..', '..', 'demo', 'dossier');
const yard = yardstick();
const inYards = (ms: number) => `${(ms / yard).toFixed(2)} yd`;
const line = (cells: readonly (string | number)[]) =>
  console.log(cells.map((cell, i) => String(cell).padStart(i === 0 ? 26 : 11)).join(' '));

console.log(`Node ${process.versions.node}, ${cpus().length} × ${cpus()[0]?.model ?? 'unknown'}`);
console.log(`Yardstick (yd), a fixed loop of logarithms: ${yard.toFixed(0)} ms\n`);

const ms = (value: number) => `${value.toFixed(0)} ms`;

function size(one: Size, folder: string): void {
  const name = `${one.printings} / ${one.claims} ${one.effort}`;
  try {
    const { readMs, dateMs, fromDiskMs, peakMb, monteCarloError } = measured(folder, one);
    const took = [ms(readMs), ms(dateMs), ms(fromDiskMs), inYards(fromDiskMs)];
    const aim = one.aim ? ms(one.aim) : '';
    line([name, ...took, `${peakMb.toFixed(0)} MB`, monteCarloError.toFixed(4), aim]);
  } catch (error) {
    line([name, `failed: ${(error as Error).message}`]);
    process.exitCode = 1;
  }
}

/** What dating anew takes once a claim is changed, at the sizes that have an aim. */
function changes(folder: string): void {
  console.log('\nOne claim changed, with all that is tied to it dated anew:');
  for (const one of USUAL.filter(({ effort, aim }) => effort === 'refined' && aim)) {
    const { changes, declined, medianMs } = redated(join(folder, `${one.printings}`));
    const took = `median ${medianMs.toFixed(1)} ms (${inYards(medianMs)}), aim ${ms(REDATE_AIM)}`;
    const whole = `${declined} of ${changes} changes left to the whole`;
    console.log(`${one.printings} / ${one.claims}: ${took}; ${whole}`);
  }
}

/** What the page waits for, from a claim changed to its first answer. */
function edits(folder: string): void {
  console.log('\nOne claim changed in the workbench, until its first answer:');
  const simulated = USUAL.filter(({ effort }) => effort === 'refined').map(
    ({ printings, claims }) => [`${printings} / ${claims}`, join(folder, `${printings}`)] as const,
  );
  for (const [name, path] of [['the demo', DEMO] as const, ...simulated]) {
    const { changes, medianMs, mostMs } = edited(path, folder);
    const took = `median ${ms(medianMs)} (${inYards(medianMs)}), at most ${ms(mostMs)}`;
    console.log(`${name}: ${took}, of ${changes}`);
  }
}

function sequence(folder: string): void {
  const here = sequencedHere();
  const jags = sequencedByJags(join(folder, 'jags'));
  if (!jags) {
    console.log('\nJAGS is not installed here: the sequence of four events was not compared.');
    return;
  }
  const apart = here.means.map(({ day }, i) => {
    const { day: sampled, error } = jags.means[i] ?? { day: Number.NaN, error: 1 };
    return { days: Math.abs(day - sampled), errors: Math.abs(day - sampled) / error };
  });
  const days = Math.max(...apart.map((one) => one.days));
  const errors = Math.max(...apart.map((one) => one.errors));
  const share = `1/${(jags.ms / here.ms).toFixed(0)}, aim 1/50`;
  console.log(
    `\nFour events in sequence: JAGS ${ms(jags.ms)}, here ${here.ms.toFixed(1)} ms (${share}); means at most ${days.toFixed(3)} days apart, ${errors.toFixed(1)} of JAGS's standard errors`,
  );
  // Four means: one beyond four standard errors comes by chance in 4,000 runs.
  if (!(errors < 4)) process.exitCode = 1;
}

/** What measuring pictures takes, beside OpenCV where there is one. */
async function pictures(folder: string): Promise<void> {
  console.log(
    '\nOne face measured, once decoded, in processor time (OpenCV: its basics in one thread, which find less):',
  );
  for (const { kind, hereMs, witnessMs } of timedFaces()) {
    const beside = witnessMs
      ? `OpenCV ${ms(witnessMs)}, ratio ${(hereMs / witnessMs).toFixed(2)}`
      : 'OpenCV is not installed here: not compared';
    console.log(`${kind}: ${ms(hereMs)} (${inYards(hereMs)}); ${beside}`);
  }
  const { megapixels, decodeMs, measureMs, stepMs, peakMb } = await wholePhoto(folder);
  console.log(
    `A photo of ${megapixels.toFixed(0)} megapixels, cold: decoded in ${ms(decodeMs)}, measured in ${ms(measureMs)}, peak ${peakMb.toFixed(0)} MB, aim ${WHOLE_AIM.peakMb} MB`,
  );
  console.log(
    `A step of its moved outline: median ${ms(stepMs)} (${inYards(stepMs)}), aim ${ms(WHOLE_AIM.stepMs)}`,
  );
  const { oneByOneMs, twoAtOnceMs } = timedCopies();
  const share = (twoAtOnceMs / oneByOneMs).toFixed(2);
  console.log(
    `Four copies: one after the other ${ms(oneByOneMs)}, two at once ${ms(twoAtOnceMs)}; ${share} of it, aim ${COPIES_AIM}`,
  );
  if (!(peakMb < WHOLE_AIM.peakMb)) process.exitCode = 1;
}

/** What publishing the demo and making its film's kit take. */
function publications(folder: string): void {
  const { coldMs, changedMs } = PUBLISH_AIM;
  console.log(
    `\nThe demo published, site with documents and film's kit; aims ${ms(coldMs)} and ${ms(changedMs)} together:`,
  );
  for (const { what, ms: all, cpuMs, peakMb } of published(DEMO, folder))
    console.log(
      `${what}: ${ms(all)}, ${ms(cpuMs)} of processor time (${inYards(cpuMs)}), peak ${peakMb.toFixed(0)} MB`,
    );
}

/** What dating takes, from dossiers on disk to one changed claim. */
function dates(folder: string): void {
  line(['printings / claims', 'read', 'date', 'from disk', '', 'peak', 'error', 'aim']);
  for (const one of values.large ? [...USUAL, LARGE] : USUAL) size(one, written(one, folder));
  changes(folder);
  edits(folder);
  sequence(folder);
  const help = timed(['bin/printlore.js', '--help'], 5);
  const check = timed(['bin/printlore.js', 'check', join(folder, '12')], 5);
  console.log(`\nprintlore --help ${help.toFixed(0)} ms (${inYards(help)})`);
  console.log(`printlore check, 12 printings ${check.toFixed(0)} ms (${inYards(check)})`);
}

const folder = mkdtempSync(join(tmpdir(), 'printlore-bench-'));
try {
  const whole = !values.pictures && !values.publish;
  if (whole) dates(folder);
  if (whole || values.pictures) await pictures(folder);
  if (whole || values.publish) publications(folder);
} finally {
  rmSync(folder, { recursive: true });
}
