import { describe, expect, it } from 'vitest';
import { medianOverBudget, overBudget } from './budgets.ts';
import { undocumented } from './doc-comments.ts';
import { belongsToStep, impurities } from './purity.ts';
import { linesOfCode, sourceOf } from './source.ts';

const step = 'src/dating/sample.ts';
const impure = (text: string) => impurities(step, sourceOf(step, text)).map(({ says }) => says);
const lines = (count: number) => 'x += 1;\n'.repeat(count);
const budget = (text: string) => overBudget(step, sourceOf(step, text)).map(({ line }) => line);
const bare = (text: string) => undocumented(step, sourceOf(step, text)).map(({ says }) => says);

describe('purity', () => {
  it.each([
    ['fetch', 'const a = fetch("x");'],
    ['Date.now', 'const a = Date.now();'],
    ['new Date()', 'const a = new Date();'],
    ['new Date()', 'const a = new Date;'],
    ['Date()', 'const a = Date();'],
    ['Math.random', 'const a = Math.random();'],
    ['Math.random', 'const chance = Math.random;'],
    ['console', 'console.log(1);'],
    ['process', 'const a = process.env.HOME;'],
    ['globalThis', 'const a = globalThis.fetch;'],
    ['performance', 'const a = performance.now();'],
    ['setTimeout', 'setTimeout(() => 1, 5);'],
  ])('finds %s in %s', (what, text) => {
    expect(impure(text)).toContain(`a step is pure, this uses ${what}`);
  });

  it.each([
    'const a = new Date("1996-03-04");',
    'const a = { process: 1, console: 2 };',
    'const a = step.process;',
    'interface A { process: string }',
    'const process = 1; const b = process + 1;',
    'function of(performance: number) { return performance; }',
    '// fetch, console and process in a comment',
    'const a = "fetch";',
  ])('lets %s pass', (text) => {
    expect(impure(text)).toEqual([]);
  });

  it('names the line', () => {
    const text = '\n\n/** Says. */\nconsole.log(1);';
    expect(impurities(step, sourceOf(step, text))[0]?.line).toBe(4);
  });

  it.each([
    ['src/dating/engine.ts', true],
    ['src/maths/deep/er.ts', true],
    ['src/dating/engine.test.ts', false],
    ['src/server/index.ts', false],
    ['checks/dating/law.ts', false],
  ])('%s belongs to a step: %s', (file, belongs) => {
    expect(belongsToStep(file)).toBe(belongs);
  });
});

describe('budgets', () => {
  it('counts code, not comments or blank lines', () => {
    const text = '/**\n * Doc.\n */\n\n// word\nconst a = [\n  1,\n];\nconst b = `\n\n`;\n';
    expect(linesOfCode(sourceOf(step, text))).toEqual([6, 7, 8, 9, 10, 11]);
  });

  it('lets a file of 300 lines pass and not one of 301', () => {
    expect(budget(lines(300))).toEqual([]);
    expect(budget(lines(301))).toEqual([1]);
  });

  it.each([
    ['function', `\nfunction long() {\n${lines(59)}}`, [2]],
    ['arrow', `const long = () => {\n${lines(59)}};`, [1]],
    ['method', `class A {\n  long() {\n${lines(59)}}\n}`, [2]],
    ['function within its budget', `function long() {\n${lines(58)}}`, []],
    ['reasoned', `// long because it is a table\nfunction long() {\n${lines(59)}}`, []],
    ['reason left out', `// long because\nfunction long() {\n${lines(59)}}`, [2]],
    ['list of tests', `describe("a", () => {\n${lines(70)}});`, []],
  ])('%s', (_, text, expected) => {
    expect(budget(text)).toEqual(expected);
  });

  it('looks at the file in the middle', () => {
    expect(medianOverBudget([10, 59, 299])).toEqual([]);
    expect(medianOverBudget([10, 60, 61])).toHaveLength(1);
  });
});

describe('doc comments', () => {
  it.each([
    ['export function weigh() {}', ['weigh has no doc comment']],
    ['export const weigh = () => 1;', ['weigh has no doc comment']],
    ['export class Scales {}', ['Scales has no doc comment']],
    ['/** */\nexport function weigh() {}', ['weigh has no doc comment']],
    ['// Weighs.\nexport function weigh() {}', ['weigh has no doc comment']],
    ['/** Weighs. */\nexport function weigh() {}', []],
    ['/** Weighs. */\nexport const weigh = () => 1;', []],
    ['function weigh() {}', []],
    ['export const GRAMS = 5;', []],
  ])('%s', (text, expected) => {
    expect(bare(text)).toEqual(expected);
  });
});
