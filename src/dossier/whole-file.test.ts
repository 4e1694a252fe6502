import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { applyWhole, isExamination, wholeDifferences } from './whole-file.ts';

const file = 'desk/examinations/hare-1.json';
const bytesOf = (text: string) => new TextEncoder().encode(text);
const textOf = (bytes: Uint8Array) => new TextDecoder().decode(bytes);
const put = (before: string, after: string) =>
  ({ file, op: 'replace', before: { text: before }, after: { text: after } }) as const;

describe('a file that is changed as a whole', () => {
  it('comes to be, is changed, and goes back the way it came', () => {
    const made = applyWhole(file, undefined, [{ file, op: 'add', after: { text: '{"a":1}' } }]);
    expect(textOf(made.bytes)).toBe('{"a":1}');
    const changed = applyWhole(file, made.bytes, [put('{"a":1}', '{"a":2}')]);
    const back = applyWhole(file, changed.bytes, changed.inverse);
    expect(textOf(back.bytes)).toBe('{"a":1}');
    expect(textOf(applyWhole(file, back.bytes, made.inverse).bytes)).toBe('{}\n');
  });

  it('asks where another text stands there now', () => {
    const { conflicts, bytes } = applyWhole(file, bytesOf('{"theirs":1}'), [
      put('{}', '{"mine":1}'),
    ]);
    expect(conflicts).toMatchObject([{ reason: 'gone', now: { text: '{"theirs":1}' } }]);
    expect(textOf(bytes)).toBe('{"theirs":1}');
  });

  it('is led from any state to any other', () => {
    fc.assert(
      fc.property(fc.json(), fc.json(), (from, to) => {
        const changes = wholeDifferences(file, bytesOf(from), bytesOf(to));
        expect(textOf(applyWhole(file, bytesOf(from), changes).bytes)).toBe(to);
      }),
    );
  });

  it.each([
    ['desk/examinations/hare-1.json', true],
    ['desk/examinations/deep/er.json', false],
    ['desk/charges.json', false],
    ['claims.csv', false],
  ])('is %s: %s', (name, yes) => {
    expect(isExamination(name)).toBe(yes);
  });
});
