import type { Cut, Script, Take } from '../types.ts';

/** Seconds of silence after a sentence, and before a scene. Judgement, no source. */
const AFTER_LINE = 0.4;
const BEFORE_SCENE = 1.2;

/** When each line is said if the script is read at its rate, one breath between sentences. */
export function plannedCut(script: Script): Cut {
  const takes: Take[] = [];
  let at = 0;
  for (const scene of script.scenes) {
    at += BEFORE_SCENE;
    for (const line of scene.lines) {
      takes.push({ line, scene, from: at, to: at + line.seconds });
      at += line.seconds + AFTER_LINE;
    }
  }
  return { script, takes, length: at };
}
