// `npm test` and `npm run check`: prepares the clone, runs every stage even when one fails, and
// ends in a summary whose last line is "N passed, N failed" (", N skipped" when there are any).
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { PreparationFailed } from '../../src/prepare/PreparationFailed.mjs';
import { prepare, preparePackages } from '../../src/prepare/prepare.mjs';
import { thisProject } from '../../src/prepare/projectPaths.mjs';
import { refusalOfNode } from '../../src/prepare/refusalOfNode.mjs';
import { readTestCounts } from './readTestCounts.mjs';
import { runStage } from './runStage.mjs';
import { migrationsStage, staticStages } from './stages.mjs';

/** @typedef {import('./runStage.mjs').Outcome} Outcome */

const STAGES_AT_ONCE = 2;
const FAILURES_NAMED = 20;
const args = process.argv.slice(2);
const isWithoutTests = args.includes('--without-tests');
const testFilters = args.filter((arg) => !arg.startsWith('--'));

/** @type {Outcome[]} */
const outcomes = [];
let counts = { passed: 0, failed: 0, skipped: 0, failures: /** @type {string[]} */ ([]) };

/** @param {Outcome} outcome */
function keep(outcome) {
  outcomes.push(outcome);
  if (!outcome.hasPassed && outcome.output !== '') console.log(`\n${outcome.output.trimEnd()}`);
  console.log(lineOf(outcome));
}

/** @param {Outcome} outcome */
function lineOf({ name, hasPassed, seconds }) {
  return `${name.padEnd(11)}${hasPassed ? 'passed' : 'FAILED'}${seconds.toFixed(1).padStart(8)} s`;
}

/**
 * @param {string} name
 * @param {() => Promise<void>} work
 */
async function prepareAsStage(name, work) {
  const startedAt = performance.now();
  let mend = '';
  try {
    await work();
  } catch (error) {
    if (!(error instanceof PreparationFailed)) throw error;
    mend = error.message;
  }
  const seconds = (performance.now() - startedAt) / 1000;
  keep({ name, hasPassed: mend === '', seconds, output: '', mend });
  return mend === '';
}

async function runStaticStages() {
  const waiting = [...staticStages];
  const runWaiting = async () => {
    for (let stage = waiting.shift(); stage !== undefined; stage = waiting.shift()) {
      keep(await runStage(stage, { isShownLive: false }));
    }
  };
  await Promise.all(Array.from({ length: STAGES_AT_ONCE }, runWaiting));
}

async function runTests() {
  const reportFolder = mkdtempSync(join(tmpdir(), 'reglow-test-report-'));
  const reportFile = join(reportFolder, 'report.json');
  const stage = {
    name: 'tests',
    args: [
      ...[join(thisProject.packages, 'vitest', 'vitest.mjs'), 'run', ...testFilters],
      ...['--reporter=default', '--reporter=json', `--outputFile.json=${reportFile}`],
    ],
    mend: '`npx vitest run <file>` runs one file alone',
  };
  const outcome = await runStage(stage, { isShownLive: true });
  counts = readTestCounts(reportFile, outcome.hasPassed);
  rmSync(reportFolder, { recursive: true, force: true });
  keep({ ...outcome, hasPassed: counts.failed === 0 });
}

function summarise() {
  const failedStages = outcomes.filter(({ hasPassed }) => !hasPassed);
  console.log('\nSummary');
  for (const outcome of outcomes) {
    console.log(`  ${lineOf(outcome)}${outcome.hasPassed ? '' : `   mend: ${outcome.mend}`}`);
  }
  for (const failure of counts.failures.slice(0, FAILURES_NAMED)) console.log(`  ✗ ${failure}`);
  const unnamed = counts.failures.length - FAILURES_NAMED;
  if (unnamed > 0) console.log(`  ✗ … and ${unnamed} more, above`);
  // The tests count one by one instead of as a stage.
  const failed = counts.failed + failedStages.filter(({ name }) => name !== 'tests').length;
  const stagesPassed = outcomes.filter(({ name, hasPassed }) => hasPassed && name !== 'tests');
  const passed = counts.passed + stagesPassed.length;
  const skipped = counts.skipped > 0 ? `, ${counts.skipped} skipped` : '';
  console.log(`${passed} passed, ${failed} failed${skipped}`);
  process.exitCode = failed > 0 ? 1 : 0;
}

const refusal = refusalOfNode(process.versions.node);
if (refusal !== null) {
  console.log(`${refusal}\n0 passed, 1 failed`);
  process.exit(1);
}
if (await prepareAsStage('packages', () => preparePackages(thisProject))) {
  await prepareAsStage('build', () => prepare(thisProject));
  await runStaticStages();
  if (isWithoutTests) keep(await runStage(migrationsStage, { isShownLive: false }));
  else await runTests();
}
summarise();
