import 'reflect-metadata';
import { clearLine, cursorTo } from 'node:readline';
import { explainFailure } from './commands/explainFailure.js';
import { runProgram } from './commands/runProgram.js';
import type { Surroundings } from './commands/surroundings.js';
import { readConfig } from './config.js';

const { argv, env, stdout, stderr } = process;

const say = (line: string): void => {
  stderr.write(`${line}\n`);
};

/** The first signal asks for an orderly end; the second, which nobody listens to, ends at once. */
const untilStopped = (): Promise<void> =>
  new Promise((resolve) => {
    const stop = () => {
      process.removeListener('SIGINT', stop);
      process.removeListener('SIGTERM', stop);
      resolve();
    };
    process.on('SIGINT', stop);
    process.on('SIGTERM', stop);
  });

async function main(): Promise<number> {
  let around: Surroundings;
  try {
    around = {
      config: readConfig(env),
      nowMs: () => Date.now(),
      print: (line) => {
        stdout.write(`${line}\n`);
      },
      say,
      repaint: stderr.isTTY
        ? (text) => {
            clearLine(stderr, 0);
            cursorTo(stderr, 0);
            stderr.write(text);
          }
        : null,
      untilStopped,
      isDebugging: env['REGLOW_DEBUG'] === '1',
    };
  } catch (error) {
    say(explainFailure(error));
    return 1;
  }
  return runProgram(argv.slice(2), around);
}

process.exitCode = await main();
