import { readdirSync, readFileSync } from 'node:fs';
import { join, relative, sep } from 'node:path';
import { medianOverBudget, overBudget } from './budgets.ts';
import { undocumented } from './doc-comments.ts';
import type { Finding } from './finding.ts';
import { belongsToStep, impurities } from './purity.ts';
import { linesOfCode, sourceOf } from './source.ts';

const root = join(import.meta.dirname, '..', '..');
const TEST = /\.test\.tsx?$/;

function filesBelow(folder: string): readonly string[] {
  return readdirSync(folder, { withFileTypes: true }).flatMap((entry) => {
    if (entry.name === 'fixtures') return [];
    const path = join(folder, entry.name);
    if (entry.isDirectory()) return filesBelow(path);
    return /\.(tsx?|[cm]?js)$/.test(entry.name) ? [relative(root, path).split(sep).join('/')] : [];
  });
}

const files = ['bin', 'checks', 'demo', 'src', 'tools'].flatMap((name) =>
  filesBelow(join(root, name)),
);
const lengths: number[] = [];
const findings: Finding[] = [];
for (const file of files) {
  const source = sourceOf(file, readFileSync(join(root, file), 'utf8'));
  findings.push(...overBudget(file, source));
  if (!file.startsWith('src/') || TEST.test(file)) continue;
  lengths.push(linesOfCode(source).length);
  if (!file.startsWith('src/web/')) findings.push(...undocumented(file, source));
  if (belongsToStep(file)) findings.push(...impurities(file, source));
}
findings.push(...medianOverBudget(lengths));
for (const { file, line, says } of findings) console.log(`${file}:${line} ${says}`);
console.log(`${files.length} files read, ${findings.length} rules broken`);
process.exitCode = findings.length > 0 ? 1 : 0;
