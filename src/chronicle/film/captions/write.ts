import { markTime } from '../cut/marks.ts';
import type { Cue } from './cues.ts';

/** Captions as WebVTT (`webvtt:2019`); text is escaped, so that nothing in it is taken for a tag. */
export function webvttOf(cues: readonly Cue[]): string {
  const blocks = cues.map(
    ({ id, from, to, lines }) =>
      `${id}\n${clock(from, '.')} --> ${clock(to, '.')}\n${lines.map(escaped).join('\n')}\n`,
  );
  return ['WEBVTT\n', ...blocks].join('\n');
}

/** The same as SubRip, numbered from 1: common practice, no standard. */
export function srtOf(cues: readonly Cue[]): string {
  const blocks = cues.map(
    ({ from, to, lines }, i) =>
      `${i + 1}\n${clock(from, ',')} --> ${clock(to, ',')}\n${lines.join('\n')}\n`,
  );
  return blocks.join('\n');
}

function clock(seconds: number, point: '.' | ','): string {
  return markTime(seconds).padStart(12, '0').replace('.', point);
}

function escaped(text: string): string {
  return text.replaceAll('&', '&amp;').replaceAll('<', '&lt;').replaceAll('>', '&gt;');
}
