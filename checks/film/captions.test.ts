import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  chapterFile,
  chapterLines,
  chaptersOf,
  cuesOf,
  hurriedCues,
  plannedCut,
  srtOf,
  webvttOf,
} from '../../src/chronicle/index.ts';
import { scriptOf, TWO } from './scripts.ts';
import { readWebvtt } from './webvtt.ts';

const words = fc
  .array(fc.stringMatching(/^[a-z0-9&<>,.’-]{1,18}$/), { minLength: 1, maxLength: 40 })
  .map((list) => `So ${list.join(' ')}.`);
const texts = fc.array(words, { minLength: 1, maxLength: 6 });

describe('captions', () => {
  it('read back from WebVTT as they were written, whatever the text', () => {
    fc.assert(
      fc.property(texts, (sentences) => {
        const cut = plannedCut(
          scriptOf({ one: sentences.map((text) => text.replaceAll('-->', '')) }),
        );
        const cues = cuesOf(cut);
        const read = readWebvtt(webvttOf(cues));
        expect(read.map(({ text }) => text)).toEqual(cues.map(({ lines }) => lines.join('\n')));
        expect(read.map(({ from, to }) => [from, to])).toEqual(
          cues.map(({ from, to }) => [from, to]),
        );
      }),
    );
  });

  it('hold every word once and in order, on at most two lines', () => {
    fc.assert(
      fc.property(texts, (sentences) => {
        const cues = cuesOf(plannedCut(scriptOf({ one: sentences })));
        expect(cues.flatMap(({ lines }) => lines).join(' ')).toBe(sentences.join(' '));
        expect(Math.max(...cues.map(({ lines }) => lines.length))).toBeLessThanOrEqual(2);
      }),
    );
  });

  it('keep to 37 letters a line where no word is longer (BBC Subtitle Guidelines 1.1.7, 3.1)', () => {
    fc.assert(
      fc.property(texts, (sentences) => {
        const cues = cuesOf(plannedCut(scriptOf({ one: sentences })));
        expect(
          Math.max(...cues.flatMap(({ lines }) => lines.map((line) => line.length))),
        ).toBeLessThanOrEqual(37);
      }),
    );
  });

  it('break Japanese between letters and no line begins with a full stop', () => {
    const text =
      '一九九八年一月号の月刊誌に綴じ込まれたこのカードは、表紙の年とは異なり、一九九七年十一月に発売された。';
    const lines = cuesOf(plannedCut(scriptOf({ one: [text] }, 'ja'))).flatMap((cue) => cue.lines);
    expect(lines.join('')).toBe(text);
    expect(lines.filter((line) => line.length > 13 || /^[、。]/.test(line))).toEqual([]);
  });

  it('break where the sentence takes a breath', () => {
    const [first] = cuesOf(
      plannedCut(scriptOf({ one: ['Lists give it one day, a shop in Leeds another.'] })),
    );
    expect(first?.lines).toEqual(['Lists give it one day,', 'a shop in Leeds another.']);
  });

  it('can be read in time at 160 words a minute and not at 400 (the same, 4.1: 160 to 180)', () => {
    const at = (rate: number) => {
      const { scenes } = TWO;
      const script = scriptOf(
        Object.fromEntries(scenes.map(({ id, lines }) => [id, lines.map(({ text }) => text)])),
        'en',
        rate,
      );
      return hurriedCues(cuesOf(plannedCut(script)), 'en').length;
    };
    expect(at(160)).toBe(0);
    expect(at(400)).toBeGreaterThan(3);
  });

  it('are numbered in SubRip, with a comma in the time', () => {
    const srt = srtOf(cuesOf(plannedCut(scriptOf({ one: ['One word.'] }))));
    expect(srt).toBe('1\n00:00:01,200 --> 00:00:01,950\nOne word.\n');
  });
});

describe('chapters', () => {
  const chapters = chaptersOf(plannedCut(TWO));

  it('fill the film without gaps, the first from the beginning', () => {
    expect(chapters.map(({ title }) => title)).toEqual(['About one', 'About two']);
    expect(chapters[0]?.from).toBe(0);
    expect(chapters[1]?.from).toBe(chapters[0]?.to);
    expect(chapters[1]?.to).toBe(plannedCut(TWO).length);
    expect(readWebvtt(chapterFile(chapters)).map(({ text }) => text)).toEqual([
      'About one',
      'About two',
    ]);
  });

  it('begin at 0:00 in a description', () => {
    expect(chapterLines(chapters)).toEqual([
      '0:00 About one',
      expect.stringMatching(/^0:2\d About two$/),
    ]);
    const [late] = chapterLines([{ id: 'x', title: 'Late', from: 3725.9, to: 4000 }]);
    expect(late).toBe('1:02:05 Late');
  });
});
