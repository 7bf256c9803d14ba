// `npm run dev`: compiles on every change and restarts the server on SQLite. tsc rather than a
// quicker compiler: type-graphql and typeorm need the decorator metadata that tsc emits.
import { spawn } from 'node:child_process';
import { existsSync, mkdirSync } from 'node:fs';
import { join } from 'node:path';
import { setTimeout as pause } from 'node:timers/promises';
import { preparePackages } from '../../src/prepare/prepare.mjs';
import { thisProject } from '../../src/prepare/projectPaths.mjs';

const POLL_MILLISECONDS = 200;
// Of the same depth as dist/, so that paths relative to a module lead to the same places.
const compiled = join(thisProject.root, 'dist-dev');
const main = join(compiled, 'src', 'main.js');

/** @type {import('node:child_process').ChildProcess[]} */
const running = [];

/** @param {string[]} args */
function start(args) {
  const child = spawn(process.execPath, args, { cwd: thisProject.root, stdio: 'inherit' });
  running.push(child);
  child.once('exit', stopAll);
}

function stopAll() {
  for (const child of running) child.kill('SIGTERM');
}

await preparePackages(thisProject);
mkdirSync(compiled, { recursive: true });
process.on('SIGINT', stopAll);
process.on('SIGTERM', stopAll);
start([
  ...[join(thisProject.packages, 'typescript', 'bin', 'tsc'), '-p', 'tsconfig.build.json'],
  ...['--outDir', compiled, '--watch', '--preserveWatchOutput', '--incremental'],
  ...['--tsBuildInfoFile', join(compiled, '.tsbuildinfo')],
]);
while (!existsSync(main)) await pause(POLL_MILLISECONDS);
start(['--watch', '--enable-source-maps', main, 'serve', ...process.argv.slice(2)]);
