import type { VerdictWord } from '../condition/verdict.js';

/** NOT_DONE: nothing recorded yet. */
export type StepOutcome = 'NOT_DONE' | 'PASSED' | 'FAILED';

/** What was recorded of one step. */
export interface RecordedStep {
  /** Whether each statement of the step holds, in the order of the procedure. */
  readonly holds: readonly boolean[];
  /** The verdict on each reading. */
  readonly words: readonly VerdictWord[];
}

/**
 * A step is passed when all its statements hold and no reading breaks a limit. A reading without a
 * limit breaks none: what it must be is then one of the statements.
 */
export function stepOutcome(recorded: RecordedStep | null): StepOutcome {
  if (recorded === null) return 'NOT_DONE';
  const isBroken = recorded.words.some((word) => word === 'BELOW_LIMIT' || word === 'ABOVE_LIMIT');
  return recorded.holds.every(Boolean) && !isBroken ? 'PASSED' : 'FAILED';
}
