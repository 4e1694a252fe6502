import { webvttOf } from './captions/write.ts';
import { markTime } from './cut/marks.ts';
import type { Cut } from './types.ts';

/** A part of a film. */
export interface Chapter {
  readonly id: string;
  readonly title: string;
  /** Seconds. */
  readonly from: number;
  readonly to: number;
}

/** The scenes in order of time as chapters without gaps, the first from 0. */
export function chaptersOf({ takes, length }: Cut): readonly Chapter[] {
  const starts = takes.filter(({ scene }, i) => takes[i - 1]?.scene.id !== scene.id);
  return starts.map(({ scene, from }, i) => ({
    id: scene.id,
    title: scene.title,
    from: i === 0 ? 0 : from,
    to: starts[i + 1]?.from ?? length,
  }));
}

/** Chapters as a WebVTT chapters file. */
export function chapterFile(chapters: readonly Chapter[]): string {
  return webvttOf(chapters.map(({ id, title, from, to }) => ({ id, from, to, lines: [title] })));
}

/** Chapters as lines of a description, the time first: `0:00 The beginning`. */
export function chapterLines(chapters: readonly Chapter[]): readonly string[] {
  const hours = chapters.some(({ from }) => from >= 3600);
  return chapters.map(({ title, from }) => {
    const time = markTime(Math.floor(from)).replace(/\.\d+$/, '');
    return `${hours ? time : time.replace(/^0:0?/, '')} ${title}`;
  });
}
