import ts from 'typescript';
import type { Finding } from './finding.ts';
import { lineOf } from './source.ts';

/** Exported functions of a file that have no doc comment of at least one sentence. */
export function undocumented(file: string, source: ts.SourceFile): readonly Finding[] {
  return source.statements.flatMap((statement) => {
    const name = exportedFunction(statement);
    if (!name || documented(statement)) return [];
    return [{ file, line: lineOf(source, statement), says: `${name} has no doc comment` }];
  });
}

function exportedFunction(statement: ts.Statement): string | undefined {
  const exported =
    ts.canHaveModifiers(statement) &&
    ts.getModifiers(statement)?.some(({ kind }) => kind === ts.SyntaxKind.ExportKeyword);
  if (!exported) return undefined;
  if (ts.isFunctionDeclaration(statement)) return statement.name?.text ?? 'default';
  if (ts.isClassDeclaration(statement)) return statement.name?.text ?? 'default';
  if (!ts.isVariableStatement(statement)) return undefined;
  const declared = statement.declarationList.declarations.find(
    ({ initializer }) =>
      initializer && (ts.isArrowFunction(initializer) || ts.isFunctionExpression(initializer)),
  );
  return declared?.name.getText();
}

function documented(statement: ts.Statement): boolean {
  return ts
    .getJSDocCommentsAndTags(statement)
    .some((node) => ts.isJSDoc(node) && ts.getTextOfJSDocComment(node.comment)?.trim());
}
