import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { readTestCounts } from '../support/readTestCounts.mjs';

let folder: string;
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'reglow-test-counts-'));
});
afterEach(() => rmSync(folder, { recursive: true, force: true }));

function countsOf(report: object, hasEndedWell: boolean): ReturnType<typeof readTestCounts> {
  const file = join(folder, 'report.json');
  const empty = { numPassedTests: 0, numPendingTests: 0, numTodoTests: 0, testResults: [] };
  writeFileSync(file, JSON.stringify({ ...empty, ...report }));
  return readTestCounts(file, hasEndedWell);
}

const aFile = (status: string, ...statuses: string[]): object => ({
  name: join(process.cwd(), 'tests', 'some.test.ts'),
  status,
  assertionResults: statuses.map((each) => ({ fullName: 'a rule', status: each })),
});

describe('the closing line of the tests', () => {
  it('counts what passed, failed and was skipped', () => {
    const report = {
      numPassedTests: 3,
      numPendingTests: 1,
      numTodoTests: 1,
      testResults: [aFile('failed', 'passed', 'failed')],
    };
    expect(countsOf(report, false)).toMatchObject({ passed: 3, failed: 1, skipped: 2 });
  });

  it('counts a file that could not be loaded as a failure', () => {
    const { failed, failures } = countsOf(
      { numPassedTests: 3, testResults: [aFile('failed')] },
      false,
    );
    expect(failed).toBe(1);
    expect(failures[0]).toContain('could not be loaded');
  });

  it('counts an error outside any test as a failure', () => {
    expect(
      countsOf({ numPassedTests: 3, testResults: [aFile('passed', 'passed')] }, false).failed,
    ).toBe(1);
  });

  it('counts a run without any test, or without a report, as a failure', () => {
    expect(countsOf({}, true).failed).toBe(1);
    expect(readTestCounts(join(folder, 'missing.json'), true).failed).toBe(1);
  });
});
