import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { readDossier } from '../src/dossier/index.ts';
import { DATE_PROPERTIES, parseEdtf } from '../src/evidence/index.ts';
import { filesOf } from '../src/host/index.ts';
import { demoFiles, truthText } from './files.ts';
import { CLAIMS } from './research/claims/index.ts';
import type { Truth } from './research/claims/statement.ts';
import { RELEASES } from './research/releases.ts';

const folder = join(import.meta.dirname, 'dossier');
const made = [...demoFiles()];

describe('the demo dossier', () => {
  it.each(made)('%s is what demo/make.ts makes', (name, text) => {
    expect(readFileSync(join(folder, name), 'utf8')).toBe(text);
  });

  it('has its truth beside it', () => {
    expect(readFileSync(join(import.meta.dirname, 'truth.json'), 'utf8')).toBe(truthText());
  });

  it('has no fault', async () => {
    const { faults, evidence } = await readDossier(await filesOf(folder));
    expect(faults).toEqual([]);
    expect(evidence.claims).toHaveLength(CLAIMS.length);
  });
});

describe('the demo shows', () => {
  const claims = CLAIMS.map(({ row }) => row);

  it('every property of a date, and facts that are none', () => {
    const used = new Set(claims.map(({ property }) => property));
    expect([...DATE_PROPERTIES].filter((property) => !used.has(property))).toEqual([]);
    expect(['number', 'finish', 'exists', 'print-run'].filter((one) => !used.has(one))).toEqual([]);
  });

  it('every way in which a claim comes about', () => {
    const all: readonly Truth[] = [
      'right',
      'next-day',
      'swapped',
      'first-of-month',
      'year-off',
      'other-moment',
      'row-shift',
      'filled-in',
      'sibling',
      'copied',
      'lead',
      'bound',
      'cover-year',
      'fact',
      'wrong',
    ];
    const used = new Set(CLAIMS.map(({ truth }) => truth));
    expect(all.filter((truth) => !used.has(truth))).toEqual([]);
  });

  it('dates in every precision', () => {
    const dates = claims.flatMap(({ property = '', value = '' }) =>
      (DATE_PROPERTIES as readonly string[]).includes(property) ? [parseEdtf(value)] : [],
    );
    expect(dates.filter(({ ok }) => !ok)).toEqual([]);
    const forms = new Set(dates.flatMap((read) => (read.ok ? [read.date.form] : [])));
    expect([...forms].sort()).toEqual([
      'day',
      'interval',
      'month',
      'season',
      'set',
      'year',
      'years',
    ]);
    expect(dates.some((read) => read.ok && read.date.approximate)).toBe(true);
    expect(dates.some((read) => read.ok && read.date.uncertain)).toBe(true);
    expect(claims.some(({ value = '' }) => value.includes('XX'))).toBe(true);
  });

  it('a claim on one of several, on a product, on parts, and under an id that was given up', () => {
    const about = claims.map(({ printing = '' }) => printing);
    expect(about.some((printing) => printing.includes('|'))).toBe(true);
    expect(about).toContain('kr-road');
    expect(about).toContain('kr-january');
    expect(claims.some(({ product = '' }) => product === 'annual-2000')).toBe(true);
  });

  it('one printing with no dated claim', () => {
    const dated = claims.filter(({ property = '' }) =>
      (DATE_PROPERTIES as readonly string[]).includes(property),
    );
    const undated = Object.keys(RELEASES).filter(
      (id) => !dated.some(({ printing = '' }) => printing.split('|').includes(id)),
    );
    expect(undated).toEqual(['kr-club']);
  });
});
