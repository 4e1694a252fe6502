import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import ts from 'typescript';
import { describe, expect, it } from 'vitest';
import { fits } from '../../bin/wanted-node.js';

const root = join(import.meta.dirname, '..', '..');

describe('the Node that is wanted', () => {
  it.each([
    ['20.19.0', true],
    ['20.20.2', true],
    ['22.12.0', true],
    ['24.0.0', true],
    ['25.1.0', true],
    ['20.18.3', false],
    ['22.11.0', false],
    ['21.7.0', false],
    ['23.11.0', false],
    ['18.20.0', false],
    ['8.17.0', false],
    ['0.10.48', false],
  ])('%s: %s', (version, good) => {
    expect(fits(version)).toBe(good);
  });

  it('is what package.json says', () => {
    const { engines } = JSON.parse(readFileSync(join(root, 'package.json'), 'utf8'));
    expect(engines.node).toBe('^20.19.0 || ^22.12.0 || >=24.0.0');
  });

  it.each(['wanted-node.js', 'printlore.js', 'test.js', 'build.js'])(
    'bin/%s can be read by a Node that knows ECMAScript 5 alone',
    (file) => {
      const text = readFileSync(join(root, 'bin', file), 'utf8');
      const { outputText } = ts.transpileModule(text, {
        compilerOptions: { target: ts.ScriptTarget.ES5, module: ts.ModuleKind.None },
      });
      // Lowered to ECMAScript 5 it stays as it is, blanks aside.
      const dense = (code: string) => code.replace(/\s+/g, '');
      expect(dense(outputText)).toBe(dense(text));
    },
  );
});
