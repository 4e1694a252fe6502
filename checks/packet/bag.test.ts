import { createHash } from 'node:crypto';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { bagOf } from '../../src/host/index.ts';
import witness from '../fixtures/packet/bag.json' with { type: 'json' };

const bytes = (text: string) => new TextEncoder().encode(text);
const textOf = (file: Uint8Array | undefined) => new TextDecoder().decode(file);

/** What is wrong with a bag by RFC 8493, 2.1, 2.2.1 and 3; written apart from what makes bags. */
function faultsOf(bag: ReadonlyMap<string, Uint8Array>): string[] {
  const faults: string[] = [];
  if (textOf(bag.get('bagit.txt')) !== 'BagIt-Version: 1.0\nTag-File-Character-Encoding: UTF-8\n')
    faults.push('bagit.txt');
  const check = (manifest: string) => {
    const listed = new Set<string>();
    for (const line of textOf(bag.get(manifest)).slice(0, -1).split('\n')) {
      const [, sum, name = ''] = /^([0-9a-f]{128}) +([\s\S]*)$/.exec(line) ?? [];
      const path = decodeURIComponent(name.replace(/%(?!0A|0D|25)/g, '%25'));
      listed.add(path);
      const file = bag.get(path);
      if (!file || createHash('sha512').update(file).digest('hex') !== sum) faults.push(path);
    }
    return listed;
  };
  const payload = check('manifest-sha512.txt');
  for (const name of bag.keys())
    if (name.startsWith('data/') && !payload.has(name)) faults.push(`${name} is not listed`);
  const tags = check('tagmanifest-sha512.txt');
  if (tags.has('tagmanifest-sha512.txt')) faults.push('the tag manifest lists itself');
  const files = [...bag].filter(([name]) => name.startsWith('data/'));
  const octets = files.reduce((sum, [, { length }]) => sum + length, 0);
  if (!textOf(bag.get('bag-info.txt')).includes(`Payload-Oxum: ${octets}.${files.length}\n`))
    faults.push('Payload-Oxum');
  return faults;
}

describe('a bag', () => {
  it('has the sums that another library reckons, in the lines of the standard', () => {
    const payload = new Map(Object.entries(witness.payload).map(([n, t]) => [n, bytes(t)]));
    const bag = bagOf(payload, [['External-Identifier', 'hare-1']]);
    expect(textOf(bag.get('manifest-sha512.txt')).trimEnd().split('\n').sort()).toEqual(
      witness.manifest,
    );
    expect(textOf(bag.get('bag-info.txt'))).toContain(`Payload-Oxum: ${witness.oxum}\n`);
  });

  it('is valid whatever its files are called', () => {
    const name = fc
      .string({ minLength: 1, unit: 'grapheme' })
      .map((text) => text.replaceAll('/', '-'));
    const payload = fc.dictionary(name, fc.uint8Array(), { minKeys: 1, noNullPrototype: true });
    fc.assert(
      fc.property(payload, (files) => {
        const bag = bagOf(new Map(Object.entries(files)), [
          ['Contact-Name', 'a\nPayload-Oxum: 1.1'],
        ]);
        expect(faultsOf(bag)).toEqual([]);
      }),
    );
  });

  it('shows a file that was changed, lost or added', () => {
    const bag = new Map(bagOf(new Map([['a.txt', bytes('a')]]), []));
    expect(faultsOf(bag)).toEqual([]);
    expect(faultsOf(new Map([...bag, ['data/a.txt', bytes('b')]]))).toEqual(['data/a.txt']);
    expect(faultsOf(new Map([...bag, ['data/b.txt', bytes('b')]]))).toContain(
      'data/b.txt is not listed',
    );
  });
});
