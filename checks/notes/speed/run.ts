import { readNotes } from '../../../src/evidence/index.ts';
import { sheets } from '../sheet.ts';

const size = Number(process.argv[2] ?? 1000);
const all = sheets('').flatMap((sheet) => [...sheet.text.split('\n'), '']);
const lines = Array.from({ length: size }, (_, at) => {
  const line = all[at % all.length]!;
  return line === '' ? line : `${line} k${at}`;
});
const before = process.cpuUsage();
readNotes(lines.join('\n'));
const { user } = process.cpuUsage(before);
console.log(`${size} lines: ${(user / 1000).toFixed(0)} ms of processor time`);
