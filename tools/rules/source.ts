import ts from 'typescript';

/** Reads a text as TypeScript; `file` decides whether tags are allowed in it. */
export function sourceOf(file: string, text: string): ts.SourceFile {
  return ts.createSourceFile(file, text, ts.ScriptTarget.Latest, true);
}

/** Every node of a file, outer ones first. */
export function* nodesOf(node: ts.Node): Generator<ts.Node> {
  yield node;
  for (const child of childrenOf(node)) yield* nodesOf(child);
}

function childrenOf(node: ts.Node): ts.Node[] {
  const children: ts.Node[] = [];
  node.forEachChild((child) => {
    children.push(child);
  });
  return children;
}

/** The line, from 1, on which a node begins. */
export function lineOf(source: ts.SourceFile, node: ts.Node): number {
  return source.getLineAndCharacterOfPosition(node.getStart(source)).line + 1;
}

/** Numbers, from 1, of the lines that hold code: not blank, and more than a comment. */
export function linesOfCode(source: ts.SourceFile): readonly number[] {
  const lines = new Set<number>();
  for (const token of tokensOf(source, source)) {
    const last = source.getLineAndCharacterOfPosition(token.getEnd()).line + 1;
    for (let line = lineOf(source, token); line <= last; line += 1) lines.add(line);
  }
  return [...lines].sort((a, b) => a - b);
}

function* tokensOf(source: ts.SourceFile, node: ts.Node): Generator<ts.Node> {
  if (ts.isJSDoc(node)) return;
  const children = node.getChildren(source);
  if (children.length === 0 && node.getWidth(source) > 0) yield node;
  for (const child of children) yield* tokensOf(source, child);
}
