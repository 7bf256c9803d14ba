import { existsSync, readFileSync } from 'node:fs';
import { relative } from 'node:path';
import { thisProject } from '../../src/prepare/projectPaths.mjs';

/**
 * @typedef {{ passed: number, failed: number, skipped: number, failures: string[] }} TestCounts
 * @typedef {{ fullName: string, status: string }} Assertion
 * @typedef {{ name: string, status: string, assertionResults: Assertion[] }} TestFile
 */

/**
 * Counts vitest's JSON report. A file that could not be loaded has no tests to count, so it counts
 * as one failure; so does a run that ended badly, or ran nothing, without naming a failed test.
 * @param {string} reportFile
 * @param {boolean} hasEndedWell
 * @returns {TestCounts}
 */
export function readTestCounts(reportFile, hasEndedWell) {
  if (!existsSync(reportFile)) {
    return { passed: 0, failed: 1, skipped: 0, failures: ['vitest ended without a report'] };
  }
  /** @type {{ numPassedTests: number, numPendingTests: number, numTodoTests: number, testResults: TestFile[] }} */
  const report = JSON.parse(readFileSync(reportFile, 'utf8'));
  const failures = report.testResults.flatMap(failuresOf);
  if (failures.length === 0 && report.numPassedTests === 0) failures.push('no test ran');
  if (failures.length === 0 && !hasEndedWell) {
    failures.push('an error outside any test; its stack is above');
  }
  return {
    passed: report.numPassedTests,
    failed: failures.length,
    skipped: report.numPendingTests + report.numTodoTests,
    failures,
  };
}

/**
 * @param {TestFile} file
 * @returns {string[]}
 */
function failuresOf(file) {
  const place = relative(thisProject.root, file.name);
  const failed = file.assertionResults.filter(({ status }) => status === 'failed');
  if (failed.length > 0) return failed.map(({ fullName }) => `${place}: ${fullName}`);
  return file.status === 'failed' ? [`${place}: could not be loaded or set up`] : [];
}
