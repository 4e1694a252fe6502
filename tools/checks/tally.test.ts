import { describe, expect, it } from 'vitest';
import { sumOf, tallyOf } from './tally.js';

const suite = (status: string, ...statuses: string[]) => ({
  name: 'a file',
  status,
  assertionResults: statuses.map((one, i) => ({ status: one, fullName: `case ${i}` })),
});

describe('tallyOf', () => {
  it('counts what passed, failed and was left out', () => {
    const testResults = [suite('failed', 'passed', 'failed', 'pending'), suite('passed', 'passed')];
    const expected = { passed: 2, failed: 1, notRun: ['case 2'] };
    expect(tallyOf({ success: false, testResults }, 1)).toEqual(expected);
  });

  it('counts a file that could not be read as failed', () => {
    const testResults = [suite('failed'), suite('passed', 'passed')];
    expect(tallyOf({ success: false, testResults }, 1)).toMatchObject({ passed: 1, failed: 1 });
  });

  it('counts a run that ended badly, and one that left no report', () => {
    const fine = { success: true, testResults: [suite('passed', 'passed')] };
    expect(tallyOf(fine, 1).failed).toBe(1);
    expect(tallyOf({ ...fine, success: false }, 0).failed).toBe(1);
    expect(tallyOf(undefined, 0)).toEqual({ passed: 0, failed: 1, notRun: [] });
    expect(tallyOf(fine, 0).failed).toBe(0);
  });
});

describe('sumOf', () => {
  const tallies = [
    { passed: 3, failed: 1, notRun: [] },
    { passed: 2, failed: 0, notRun: ['the page in a browser'] },
  ];

  it('adds up', () => {
    const expected = { passed: 5, failed: 1, notRun: ['the page in a browser'] };
    expect(sumOf(tallies, { complete: false })).toEqual(expected);
  });

  it('counts what was not run as failed where nothing may be left out', () => {
    expect(sumOf(tallies, { complete: true }).failed).toBe(2);
  });
});
