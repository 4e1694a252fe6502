import type { Pronounced } from './spoken/index.ts';

/** What is said in a film, scene by scene; a plain value from which all its files are made. */
export interface Script {
  readonly title: string;
  /** BCP 47 tag of what is spoken. */
  readonly language: string;
  /** The day that its figures hold for, ISO 8601; null where nothing has a day. */
  readonly asOf: string | null;
  /** Words a minute at which it is read. */
  readonly rate: number;
  readonly scenes: readonly Scene[];
}

/** What is told of one printing, or before and after all of them. */
export interface Scene {
  /** The printing's id, or `index` for what is told before them. */
  readonly id: string;
  readonly title: string;
  readonly lines: readonly Line[];
  /** Foreign names in it, and how they are said. */
  readonly names: readonly Pronounced[];
}

/** One sentence. */
export interface Line {
  /** `SCENE.NUMBER`, from 1. */
  readonly id: string;
  /** As it stands in captions. */
  readonly text: string;
  /** The same with dates and numbers spelled out. */
  readonly spoken: string;
  /** Names of the figures in it. */
  readonly figures: readonly string[];
  /** Seconds that reading it takes. */
  readonly seconds: number;
}

/** A line at its place in the film, in seconds from the beginning. */
export interface Take {
  readonly line: Line;
  readonly scene: Scene;
  readonly from: number;
  readonly to: number;
}

/** The lines of a script at their places, in order of time. */
export interface Cut {
  readonly script: Script;
  readonly takes: readonly Take[];
  /** Seconds. */
  readonly length: number;
}
