/**
 * @typedef {{ passed: number, failed: number, notRun: readonly string[] }} Tally
 * @typedef {{ status: string, fullName: string }} Case
 * @typedef {{ name: string, status: string, assertionResults: readonly Case[] }} Suite
 * @typedef {{ success: boolean, testResults: readonly Suite[] }} Report
 */

/**
 * Counts what vitest's JSON reporter wrote. A file that could not be read at all counts as one
 * failed check, and so does a run that ended badly without a failed test.
 * @param {Report | undefined} report `undefined` where vitest wrote none
 * @param {number | null} code how vitest ended
 * @returns {Tally}
 */
export function tallyOf(report, code) {
  if (!report) return { passed: 0, failed: 1, notRun: [] };
  const cases = report.testResults.flatMap((suite) => suite.assertionResults);
  const count = (/** @type {string} */ status) =>
    cases.filter((one) => one.status === status).length;
  const broken = report.testResults.filter(
    ({ status, assertionResults }) =>
      status === 'failed' && !assertionResults.some((one) => one.status === 'failed'),
  );
  const failed = count('failed') + broken.length;
  return {
    passed: count('passed'),
    failed: failed === 0 && (code !== 0 || !report.success) ? 1 : failed,
    notRun: cases
      .filter(({ status }) => status !== 'passed' && status !== 'failed')
      .map(({ fullName }) => fullName),
  };
}

/**
 * Adds up what the checks came to. Where nothing may be left out, each that was not run failed.
 * @param {readonly Tally[]} tallies
 * @param {{ complete: boolean }} rule
 * @returns {Tally}
 */
export function sumOf(tallies, { complete }) {
  const notRun = tallies.flatMap((tally) => tally.notRun);
  const sum = (/** @type {'passed' | 'failed'} */ key) =>
    tallies.reduce((total, tally) => total + tally[key], 0);
  return { passed: sum('passed'), failed: sum('failed') + (complete ? notRun.length : 0), notRun };
}
