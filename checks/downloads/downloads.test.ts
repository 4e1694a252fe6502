import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { annotationsOf, cslOf, feedOf, jsonOf, researchZip } from '../../src/chronicle/index.ts';
import { HISTORY, TABLES, TITLE } from './ground.ts';

const fixture = (name: string) =>
  readFileSync(new URL(`../fixtures/downloads/${name}`, import.meta.url));
// What feedparser 6.0.10 and Python's zipfile and csv find; see checks/makers/downloads.
const read = JSON.parse(fixture('read.json').toString());

describe('the feed of revisions', () => {
  it('is the one that another reader read', () => {
    expect(feedOf(TITLE, HISTORY)).toBe(fixture('revisions.atom').toString());
    expect(read.feed).toMatchObject({ well_formed: true, version: 'atom10', title: TITLE });
  });

  it('has what RFC 4287 asks of feed and entries: an id, a title, a moment, and an author', () => {
    const all = [read.feed, ...read.feed.entries];
    const uuid = /^urn:uuid:[0-9a-f]{8}-[0-9a-f]{4}-8[0-9a-f]{3}-8[0-9a-f]{3}-[0-9a-f]{12}$/;
    for (const one of all) {
      expect(one.id).toMatch(uuid);
      expect(one.updated).toMatch(/^2026-0[12]-15T00:00:00Z$/);
    }
    expect(new Set(all.map(({ id }) => id)).size).toBe(3);
    expect(read.feed.author).toContain(TITLE);
    expect(read.feed.entries.map(({ updated }: { updated: string }) => updated)).toEqual([
      '2026-02-15T00:00:00Z',
      '2026-01-15T00:00:00Z',
    ]);
  });

  it('tells what changed, and nothing of a source that stays at home', () => {
    const { content } = read.feed.entries[0];
    expect(content).toContain('New evidence: b & <c>, on-sale of x, 1995-05-13');
    expect(content).toContain('Misread before: a, on-sale of x, 1995-05-01 → 1995-05-13');
    expect(content).toContain('release moved by 12 days');
    expect(content).not.toContain('hidden');
  });
});

describe('the research as a zip', () => {
  it('holds what another reader finds, at one moment', () => {
    const bytes = researchZip(TABLES, new Map(), undefined);
    expect(Buffer.from(bytes).equals(fixture('research.zip'))).toBe(true);
    expect(read.zip.dates).toEqual(['(1980, 1, 1, 0, 0, 0)']);
    for (const { file, columns, rows } of TABLES) {
      const cells = rows.map((row) => columns.map((column) => row.cells[column]));
      expect(read.zip.tables[file]).toEqual([columns, ...cells]);
    }
  });
});

describe('other forms', () => {
  it('sources are items of the Citation Style Language', () => {
    expect(cslOf(TABLES)).toEqual([
      {
        id: 'a',
        type: 'post',
        title: 'A page',
        URL: 'https://a.example/1',
        accessed: { 'date-parts': [[2026, 2, 11]] },
      },
      { id: 'n', type: 'personal_communication', title: 'n' },
    ]);
  });

  it('claims with an address and traits with a region are Web Annotations', () => {
    const found = annotationsOf(TABLES, { width: 63, height: 88 });
    expect(found.map(({ id }) => id)).toEqual(['#claim-2', '#trait-2']);
    // 6.3 and 12.6 of 63 mm, 8.8 and 17.6 of 88 mm: a tenth and two.
    expect(found[1]?.target).toMatchObject({
      selector: { type: 'FragmentSelector', value: 'xywh=percent:10,10,10,10' },
    });
    expect(annotationsOf(TABLES, null).map(({ id }) => id)).toEqual(['#claim-2']);
  });

  it('tables are one object of JSON, without empty cells', () => {
    const rows = JSON.parse(jsonOf(TABLES));
    expect(rows['sources.csv'][1]).toEqual({ id: 'n', kind: 'correspondence', accessed: '2026' });
  });
});
