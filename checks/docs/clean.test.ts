import { describe, expect, it } from 'vitest';
import { filesBelow, textOf } from './repository.ts';

/** What belongs to the machine of whoever wrote it, and not into a file that others get. */
const OF_A_MACHINE = [
  { what: 'a path of one machine', looks: /(^|[\s"'(=:`])\/(work|root)\/[\w.-]+/m },
  { what: 'a drive of one machine', looks: /\b[A-Z]:\\Users\\/ },
  { what: 'a registry', looks: /\bregistry\.(npmjs|yarnpkg)\.|localhost:\d+\/(npm|repository)/ },
  { what: 'a key', looks: /-----BEGIN [A-Z ]*PRIVATE KEY-----/ },
];

const TEXT = /\.(tsx?|[cm]?js|json|md|csv|css|html|svg|bib|py|R|ya?ml|txt)$/;
const files = filesBelow().filter((name) => TEXT.test(name) && !name.endsWith('clean.test.ts'));

describe('no file holds', () => {
  it.each(OF_A_MACHINE)('$what', ({ looks }) => {
    expect(files.length).toBeGreaterThan(100);
    expect(files.filter((name) => looks.test(textOf(name)))).toEqual([]);
  });

  it('and such things would be found', () => {
    const [path, drive, registry] = OF_A_MACHINE.map(({ looks }) => looks);
    expect(path?.test(['see ', 'root', 'someone'].join('/'))).toBe(true);
    expect(drive?.test('C:\\Users\\x')).toBe(true);
    expect(registry?.test('https://registry.npmjs.org/x')).toBe(true);
  });
});

describe('the documents', () => {
  const documentsAndPage = files.filter((name) => /^(README|docs\/|src\/web\/)/.test(name));

  it('pass no verdict on a card', () => {
    expect(documentsAndPage.filter((name) => /\bfakes?\b/i.test(textOf(name)))).toEqual([]);
  });
});
