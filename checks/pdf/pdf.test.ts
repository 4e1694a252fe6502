import { spawnSync } from 'node:child_process';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import sharp from 'sharp';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { pageDrawings, pdfOf } from '../../src/host/index.ts';
import { EVERYTHING } from './paper.ts';
import { CAN_READ, read } from './witness.ts';

const folder = mkdtempSync(join(tmpdir(), 'printlore-pdf-'));
const file = join(folder, 'everything.pdf');
const dot = sharp({ create: { width: 40, height: 56, channels: 3, background: '#888' } });
let pictures: ReadonlyMap<string, Uint8Array>;
let bytes: Uint8Array;

beforeAll(async () => {
  pictures = new Map([['dot.png', await dot.png().toBuffer()]]);
  ({ bytes } = await pdfOf(EVERYTHING, pictures));
  writeFileSync(file, bytes);
});
afterAll(() => rmSync(folder, { recursive: true }));

describe('a paper set on pages', () => {
  it('gives the same bytes again, whatever the time zone', async () => {
    const zone = process.env.TZ;
    process.env.TZ = 'Pacific/Auckland';
    const again = await pdfOf(EVERYTHING, pictures);
    if (zone === undefined) delete process.env.TZ;
    else process.env.TZ = zone;
    expect(Buffer.compare(again.bytes, bytes)).toBe(0);
  });

  it('is drawn page by page as it is set', async () => {
    const { drawings } = await pageDrawings(EVERYTHING, pictures);
    expect(drawings).toHaveLength((await pdfOf(EVERYTHING, pictures)).pages);
    const sizes = await Promise.all(drawings.map((svg) => sharp(Buffer.from(svg)).stats()));
    // Paper is white; each page has ink on it, and none is all ink.
    for (const { channels } of sizes) {
      expect(channels[0]?.min).toBeLessThan(80);
      expect(channels[0]?.mean).toBeGreaterThan(200);
    }
  });

  it('says what is wrong where it cannot be set', async () => {
    await expect(pdfOf(EVERYTHING)).rejects.toThrow(/the paper cannot be set: .*dot\.png/);
  });
});

describe.skipIf(!CAN_READ)('a paper read by others (needs qpdf and poppler)', () => {
  it('is a whole PDF by qpdf', () => {
    const { status, stderr } = spawnSync('qpdf', ['--check', file], { encoding: 'utf8' });
    expect([status, stderr]).toEqual([0, '']);
  });

  it('is tagged, with its language, its title and bookmarks, and declares PDF/UA', () => {
    const plain = read('qpdf', ['--qdf', '--object-streams=disable', file, '-']);
    for (const part of [
      '/StructTreeRoot',
      '/Marked true',
      '/Lang (en',
      '/Outlines',
      'pdfuaid:part',
    ])
      expect(plain).toContain(part);
    const info = read('pdfinfo', [file]);
    expect(info).toMatch(/^Title: +Tidebell Hare 밀물종 토끼$/m);
    expect(info).toMatch(/^CreationDate: .*Jun 30 .*2026/m);
    expect(info).toMatch(/^Page size: .*\(A4\)$/m);
  });

  it('has headings, tables, lists and figures with their alternatives in its structure', () => {
    const structure = read('pdfinfo', ['-struct-text', file]);
    for (const part of ['H1', 'H2', 'Table', 'TH', 'TD', 'L', 'LI', 'Figure', 'Link', 'TOC'])
      expect(structure).toMatch(new RegExp(`^ *${part}\\b`, 'm'));
    const plain = read('qpdf', ['--qdf', '--object-streams=disable', file, '-']);
    expect(plain).toContain('/Alt (A bar from May to June 1998)');
    expect(plain).toContain('/Alt (A grey dot)');
  });

  it('carries every font, cut to its letters', () => {
    const [, , ...fonts] = read('pdffonts', [file]).trim().split('\n');
    expect(fonts.length).toBeGreaterThan(4);
    for (const font of fonts) expect(font).toMatch(/^[A-Z]{6}\+.* yes yes yes +\d+ +\d+$/);
  });

  it('says what was written, in every script, markup as words and lost letters by number', () => {
    const text = read('pdftotext', [file, '-']);
    for (const words of ['밀물종 토끼', '潮鐘うさぎ', '#import "x" $a$ *b* _c_ @d <e> \\', '1,204'])
      expect(text).toContain(words);
    expect(text).toContain('[U+1F407] back.');
    expect(text).toContain('June 1998');
  });

  it('draws figures as vectors', () => {
    const images = read('pdfimages', ['-list', file]).trim().split('\n').slice(2);
    expect(images).toHaveLength(1);
    expect(read('pdfinfo', [file])).toMatch(/^Pages: +3$/m);
  });

  it('fits the paper that is asked for', async () => {
    const letter = await pdfOf({ ...EVERYTHING, size: 'letter' }, pictures);
    writeFileSync(join(folder, 'letter.pdf'), letter.bytes);
    expect(read('pdfinfo', [join(folder, 'letter.pdf')])).toMatch(/^Page size: .*\(letter\)$/m);
  });
});
