import { spawn } from 'node:child_process';

const PASSED_ON = /** @type {const} */ (['SIGINT', 'SIGTERM', 'SIGHUP']);

/**
 * Runs a Node program to its end, its output going to standard error. A signal sent to us is passed
 * on; once the tool is gone, we end by the same signal, so that whoever waits for us sees it.
 * @param {string[]} args the program and its arguments
 * @param {{ cwd: string, onStart?: (pid: number) => void, beforeDyingOf?: () => void }} options
 * @returns {Promise<number>} the exit code, 1 when the tool was ended by a signal of its own
 */
export function runTool(args, { cwd, onStart, beforeDyingOf }) {
  return new Promise((resolve, reject) => {
    const tool = spawn(process.execPath, args, { cwd, stdio: ['ignore', 2, 2] });
    /** @type {NodeJS.Signals | undefined} */
    let received;
    /** @param {NodeJS.Signals} signal */
    const passOn = (signal) => {
      received ??= signal;
      tool.kill(signal);
    };
    for (const signal of PASSED_ON) process.on(signal, passOn);
    if (tool.pid !== undefined) onStart?.(tool.pid);
    tool.once('error', reject);
    tool.once('close', (code) => {
      for (const signal of PASSED_ON) process.off(signal, passOn);
      if (received === undefined) return resolve(code ?? 1);
      beforeDyingOf?.();
      process.kill(process.pid, received);
    });
  });
}
