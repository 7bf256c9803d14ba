import { spawn } from 'node:child_process';
import { thisProject } from '../../src/prepare/projectPaths.mjs';

/** @typedef {{ name: string, hasPassed: boolean, seconds: number, output: string, mend: string }} Outcome */

/**
 * Runs one stage to its end.
 * @param {import('./stages.mjs').Stage} stage
 * @param {{ isShownLive: boolean }} options live: its output goes straight to the screen
 * @returns {Promise<Outcome>}
 */
export function runStage(stage, { isShownLive }) {
  const startedAt = performance.now();
  return new Promise((resolve, reject) => {
    const child = spawn(process.execPath, stage.args, {
      cwd: thisProject.root,
      stdio: ['ignore', isShownLive ? 'inherit' : 'pipe', isShownLive ? 'inherit' : 'pipe'],
    });
    const stop = () => child.kill('SIGTERM');
    process.once('SIGTERM', stop);
    /** @type {Buffer[]} */
    const chunks = [];
    child.stdout?.on('data', (/** @type {Buffer} */ chunk) => chunks.push(chunk));
    child.stderr?.on('data', (/** @type {Buffer} */ chunk) => chunks.push(chunk));
    child.once('error', reject);
    child.once('close', (code) => {
      process.off('SIGTERM', stop);
      resolve({
        name: stage.name,
        hasPassed: code === 0,
        seconds: (performance.now() - startedAt) / 1000,
        output: Buffer.concat(chunks).toString('utf8'),
        mend: stage.mend,
      });
    });
  });
}
