import ts from 'typescript';
import type { Finding } from './finding.ts';
import { lineOf, linesOfCode, nodesOf } from './source.ts';

/** Lines of code that a file, the file in the middle and a function may have. */
export const BUDGET = { file: 300, median: 60, function: 60 } as const;

/** A file over its budget, and each function over its own that gives no reason for its length. */
export function overBudget(file: string, source: ts.SourceFile): readonly Finding[] {
  const lines = linesOfCode(source);
  const long =
    lines.length > BUDGET.file
      ? [{ file, line: 1, says: `${lines.length} lines of code, ${BUDGET.file} at most` }]
      : [];
  return [...long, ...longFunctions(file, source, lines)];
}

/** The middle one of the files' lines of code, where it is over its budget. */
export function medianOverBudget(lengths: readonly number[]): readonly Finding[] {
  const middle = [...lengths].sort((a, b) => a - b)[Math.floor(lengths.length / 2)] ?? 0;
  if (middle < BUDGET.median) return [];
  const says = `the file in the middle has ${middle} lines of code, fewer than ${BUDGET.median} wanted`;
  return [{ file: 'src', line: 1, says }];
}

function longFunctions(
  file: string,
  source: ts.SourceFile,
  lines: readonly number[],
): readonly Finding[] {
  const found: Finding[] = [];
  for (const node of nodesOf(source)) {
    if (!isFunction(node) || isTestBlock(node)) continue;
    const first = lineOf(source, node);
    const last = source.getLineAndCharacterOfPosition(node.getEnd()).line + 1;
    const length = lines.filter((line) => line >= first && line <= last).length;
    if (length <= BUDGET.function || hasReason(source, first)) continue;
    const says = `a function of ${length} lines of code, ${BUDGET.function} at most without a "// long because" above it`;
    found.push({ file, line: first, says });
  }
  return found;
}

function isFunction(node: ts.Node): boolean {
  return (
    ts.isFunctionDeclaration(node) ||
    ts.isFunctionExpression(node) ||
    ts.isArrowFunction(node) ||
    ts.isMethodDeclaration(node) ||
    ts.isConstructorDeclaration(node)
  );
}

/** `describe('…', () => { … })` is a list of tests, not a function to be read as one. */
function isTestBlock(node: ts.Node): boolean {
  return ts.isCallExpression(node.parent) && /^describe\b/.test(node.parent.expression.getText());
}

function hasReason(source: ts.SourceFile, line: number): boolean {
  const above = source.text.split('\n')[line - 2] ?? '';
  return /^\s*\/\/ long because \S/.test(above);
}
