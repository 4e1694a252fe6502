import { describe, expect, it } from 'vitest';
import { likeTheOthers } from './choice.ts';
import type { Candidate } from './outermost.ts';
import type { BySide } from './sides.ts';

const line = (depth: number, support: number): Candidate => ({
  line: { depth, slope: 0 },
  support,
  seenOn: new Uint8Array(0),
  size: 10,
});
const [plate, faint] = [line(6.4, 0.8), line(3.3, 0.5)];
const rest = { right: line(2.4, 0.9), bottom: line(3.1, 0.8), left: line(3.2, 1) };
const all = (top: readonly Candidate[]): BySide<readonly Candidate[]> => ({
  top,
  right: [rest.right],
  bottom: [rest.bottom],
  left: [rest.left],
});

describe('a line far deeper than those of the other sides', () => {
  it('gives way to a fainter one at their depth', () => {
    const chosen = likeTheOthers({ top: plate, ...rest }, all([faint, plate]));
    expect(chosen).toEqual({ top: faint, ...rest });
  });

  it('stays where no other one is seen there, or hardly', () => {
    const elsewhere = all([line(3.3, 0.2), line(1.6, 0.5), plate]);
    expect(likeTheOthers({ top: plate, ...rest }, elsewhere).top).toBe(plate);
  });

  it('stays where it is no deeper than a print may lie off the middle', () => {
    const wide = line(5, 0.9);
    expect(likeTheOthers({ top: wide, ...rest }, all([faint, wide])).top).toBe(wide);
  });
});
