import ts from 'typescript';
import { describe, expect, it } from 'vitest';
import { textOf } from './repository.ts';

const guide = textOf('docs/guide/date.md');
const types = ts.createSourceFile(
  'types.ts',
  textOf('src/dating/types.ts'),
  ts.ScriptTarget.ES2023,
  true,
);

/** Names of all properties that the answer of `date` can have. */
function fields(): readonly string[] {
  const found = new Set<string>();
  const visit = (node: ts.Node): void => {
    if (ts.isPropertySignature(node)) found.add(node.name.getText());
    ts.forEachChild(node, visit);
  };
  visit(types);
  return [...found];
}

/** Words of a union of string literals. */
function wordsOf(type: string): readonly string[] {
  const declared = types.statements.find(
    (statement): statement is ts.TypeAliasDeclaration =>
      ts.isTypeAliasDeclaration(statement) && statement.name.text === type,
  );
  const words: string[] = [];
  const visit = (node: ts.Node): void => {
    if (ts.isStringLiteral(node)) words.push(node.text);
    ts.forEachChild(node, visit);
  };
  if (declared !== undefined) visit(declared);
  return words;
}

describe('docs/guide/date.md', () => {
  it('explains every field of the answer', () => {
    expect(fields()).toContain('p_best');
    expect(fields().filter((field) => !guide.includes(`\`${field}\``))).toEqual([]);
  });

  it('explains every reading', () => {
    expect(wordsOf('Reading')).toContain('swapped');
    expect(
      wordsOf('Reading').filter((word) => !new RegExp(`^\\| \`${word}\` *\\|`, 'm').test(guide)),
    ).toEqual([]);
  });
});
