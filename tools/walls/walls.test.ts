import { fileURLToPath } from 'node:url';
import { cruise, type ICruiseResult } from 'dependency-cruiser';
import { beforeAll, describe, expect, it } from 'vitest';
import { forbidden, options } from './rules.js';
import { MAY_IMPORT } from './table.js';

/** A small house with one broken wall a file; each is answered by the rule that guards that wall. */
const BROKEN = [
  ['src/dating/upwards.ts', 'dating-may-import'],
  ['src/dating/upwards.test.ts', 'dating-may-import'],
  ['src/dating/sly.ts', 'dating-may-import'],
  ['src/dating/type-of-store.ts', 'dating-may-import'],
  ['src/dating/from-checks.ts', 'dating-may-import'],
  ['src/dating/deep.ts', 'only-through-the-door'],
  ['src/dating/reads-files.ts', 'steps-are-pure'],
  ['src/store/dossier.ts', 'store-may-import'],
  ['src/host/heavy.ts', 'host-takes-types-only'],
  ['src/web/stores.ts', 'web-may-import'],
  ['src/cli/serves.ts', 'cli-may-import'],
  ['src/catalogue/about.ts', 'no-cycle'],
  ['src/maths/vague.ts', 'no-vague-folder'],
  ['src/maths/lost.ts', 'resolves'],
  ['src/gallery/index.ts', 'every-folder-is-in-the-table'],
  ['checks/deep.ts', 'only-through-the-door-from-outside'],
] as const;
const WHOLE = ['src/dating/allowed.ts', 'src/host/allowed.ts', 'checks/allowed.ts'];

let broken: ReadonlyMap<string, readonly string[]>;

beforeAll(async () => {
  const baseDir = fileURLToPath(new URL('./fixtures/house', import.meta.url));
  const ruleSet = { forbidden } as never;
  const { output } = await cruise(['src', 'checks'], {
    ...options,
    baseDir,
    validate: true,
    ruleSet,
  });
  const { violations } = (output as ICruiseResult).summary;
  const files = [...new Set(violations.map((violation) => violation.from))];
  broken = new Map(
    files.map((file) => [
      file,
      violations.filter(({ from }) => from === file).map(({ rule }) => rule.name),
    ]),
  );
});

describe('walls', () => {
  it.each(BROKEN)('%s breaks %s', (file, rule) => {
    expect(broken.get(file) ?? []).toContain(rule);
  });

  it.each(WHOLE)('%s breaks none', (file) => {
    expect(broken.has(file)).toBe(false);
  });

  it('has a rule for each folder of the table', () => {
    const names = forbidden.map(({ name }) => name);
    expect(names).toEqual(
      expect.arrayContaining(Object.keys(MAY_IMPORT).map((folder) => `${folder}-may-import`)),
    );
  });
});
