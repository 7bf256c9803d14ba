import { CommanderError } from 'commander';
import { buildProgram } from './buildProgram.js';
import { explainFailure } from './explainFailure.js';
import type { Surroundings } from './surroundings.js';

/** Runs one command. @returns the exit code: 0, or 1 after a sentence on standard error. */
export async function runProgram(args: readonly string[], around: Surroundings): Promise<number> {
  try {
    await buildProgram(around).parseAsync([...args], { from: 'user' });
    return 0;
  } catch (error) {
    // Commander has said already what it did not understand.
    if (error instanceof CommanderError) return error.exitCode === 0 ? 0 : 1;
    around.say(
      around.isDebugging && error instanceof Error
        ? (error.stack ?? error.message)
        : explainFailure(error),
    );
    return 1;
  }
}
