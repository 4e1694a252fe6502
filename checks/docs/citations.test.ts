import { describe, expect, it } from 'vitest';
import { filesBelow, textOf } from './repository.ts';

const keys = [...textOf('docs/references.bib').matchAll(/^@\w+\{([^,\s]+),/gm)].map(
  (match) => match[1] ?? '',
);

/** Citation keys in a text: an author or body, a colon and a year, between backticks. */
function citedIn(text: string): readonly string[] {
  return [...text.matchAll(/`([a-z][a-z-]*:\d{4}[a-z]?)`/g)].map((match) => match[1] ?? '');
}

const readers = filesBelow().filter(
  (name) =>
    /^(src|checks|tools|demo|docs)\/.*\.(tsx?|js|md|R|py)$/.test(name) &&
    !name.endsWith('citations.test.ts'),
);

describe('docs/references.bib', () => {
  it('has no key twice', () => {
    expect(keys.filter((key, at) => keys.indexOf(key) !== at)).toEqual([]);
  });

  it('holds every key that is cited', () => {
    const unknown = readers.flatMap((name) =>
      citedIn(textOf(name))
        .filter((key) => !keys.includes(key))
        .map((key) => `${name}: ${key}`),
    );
    expect(unknown).toEqual([]);
  });

  it('holds nothing that is not cited', () => {
    const texts = readers.map((name) => textOf(name));
    const unused = keys.filter((key) => !texts.some((text) => text.includes(key)));
    expect(unused).toEqual([]);
  });

  it('tells a key from other words with a colon', () => {
    expect(citedIn('as in (`talts:2018`), `node:fs`, `value:1`, talts:2018')).toEqual([
      'talts:2018',
    ]);
  });
});
