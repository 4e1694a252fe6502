import { describe, expect, it } from 'vitest';
import { progressOn, stepsOn } from './progress.ts';

function told(watched: boolean, times: readonly number[]): readonly string[] {
  const said: string[] = [];
  const clock = [0, ...times][Symbol.iterator]();
  const terminal = {
    width: 80,
    watched,
    write: async () => {},
    say: (text: string) => void said.push(text),
  };
  const progress = progressOn(terminal, 'Dating', () => clock.next().value ?? 0);
  for (const [i] of times.entries()) progress.report(i / times.length);
  progress.end();
  return said;
}

describe('progress', () => {
  it('says nothing of work that lasts less than a second', () => {
    expect(told(true, [100, 500, 999])).toEqual([]);
  });

  it('says nothing where nobody watches', () => {
    expect(told(false, [100, 2000, 9000])).toEqual([]);
  });

  it('tells the share after a second, not too often, and wipes its line', () => {
    expect(told(true, [500, 1100, 1150, 1400])).toEqual([
      '\rDating …  25 %',
      '\rDating …  75 %',
      `\r${' '.repeat(14)}\r`,
    ]);
  });
});

describe('steps', () => {
  const saidOf = (watched: boolean) => {
    const said: string[] = [];
    const say = (text: string) => void said.push(text);
    const steps = stepsOn({ width: 80, watched, write: async () => {}, say });
    steps.say('Reading', 0);
    steps.say('Weighing', 0.95);
    steps.end();
    return said;
  };

  it('are told as they begin, each over the last, and wiped', () => {
    expect(saidOf(true)).toEqual([
      '\r  0 %  Reading …',
      '\r 95 %  Weighing …',
      `\r${' '.repeat(17)}\r`,
    ]);
  });

  it('are told nobody who does not watch', () => {
    expect(saidOf(false)).toEqual([]);
  });
});
