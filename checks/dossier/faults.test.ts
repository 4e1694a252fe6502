import { readdirSync, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { describe, expect, it } from 'vitest';
import { readDossier } from '../../src/dossier/index.ts';
import { filesOf } from '../../src/host/index.ts';

/**
 * Wrong input beside the exact list of what is wrong with it: each folder of the fixtures is a
 * dossier, and `faults.json` in it was read through by hand against the description of the folder.
 */
const folder = fileURLToPath(new URL('../fixtures/faults/', import.meta.url));
const cases = readdirSync(folder);

describe('faults of a folder', () => {
  it.each(cases)('%s', async (name) => {
    const { faults } = await readDossier(await filesOf(folder + name));
    const expected: unknown = JSON.parse(readFileSync(`${folder}${name}/faults.json`, 'utf8'));
    expect(faults).toEqual(expected);
  });
});
