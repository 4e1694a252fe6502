import ts from 'typescript';
import { STEPS } from '../walls/table.js';
import type { Finding } from './finding.ts';
import { lineOf, nodesOf } from './source.ts';

const PLACES = [
  ...['fetch', 'XMLHttpRequest', 'WebSocket', 'console', 'process', 'performance', 'crypto'],
  ...['window', 'document', 'navigator', 'localStorage', 'setTimeout', 'setInterval', 'globalThis'],
];
const MEMBERS = ['Date.now', 'Math.random'];
const STEP = new RegExp(`^src/(${STEPS.join('|')})/`);

/** Whether the file belongs to a step of the job, its tests left out. */
export function belongsToStep(file: string): boolean {
  return STEP.test(file) && !/\.test\.tsx?$/.test(file);
}

/** Every use of network, clock, chance, terminal or surroundings in a file that must be pure. */
export function impurities(file: string, source: ts.SourceFile): readonly Finding[] {
  const found: Finding[] = [];
  const names = declaredNames(source);
  for (const node of nodesOf(source)) {
    const what = impurityOf(node, names);
    if (what) {
      found.push({ file, line: lineOf(source, node), says: `a step is pure, this uses ${what}` });
    }
  }
  return found;
}

function impurityOf(node: ts.Node, declared: ReadonlySet<string>): string | undefined {
  if (ts.isPropertyAccessExpression(node) && MEMBERS.includes(node.getText())) {
    return node.getText();
  }
  if (ts.isNewExpression(node) && node.expression.getText() === 'Date') {
    return node.arguments?.length ? undefined : 'new Date()';
  }
  if (ts.isCallExpression(node) && node.expression.getText() === 'Date') return 'Date()';
  if (!ts.isIdentifier(node) || !PLACES.includes(node.text) || declared.has(node.text)) {
    return undefined;
  }
  return isNameOnly(node) ? undefined : node.text;
}

/** A field or a label that merely bears the name. */
function isNameOnly(node: ts.Identifier): boolean {
  const { parent } = node;
  if (ts.isPropertyAccessExpression(parent)) return parent.name === node;
  if (ts.isQualifiedName(parent)) return parent.right === node;
  return (
    (ts.isPropertyAssignment(parent) && parent.name === node) ||
    ts.isPropertySignature(parent) ||
    ts.isPropertyDeclaration(parent) ||
    ts.isMethodSignature(parent) ||
    ts.isMethodDeclaration(parent)
  );
}

/** Names that the file itself declares or imports, and so may use. */
function declaredNames(source: ts.SourceFile): ReadonlySet<string> {
  const names = new Set<string>();
  for (const node of nodesOf(source)) {
    const declares =
      ts.isVariableDeclaration(node) ||
      ts.isParameter(node) ||
      ts.isFunctionDeclaration(node) ||
      ts.isBindingElement(node) ||
      ts.isImportSpecifier(node);
    if (declares && node.name && ts.isIdentifier(node.name)) names.add(node.name.text);
  }
  return names;
}
