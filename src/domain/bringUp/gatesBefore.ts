import type { StepOutcome } from './stepOutcome.js';

export interface GatedStep {
  readonly key: string;
  readonly isGate: boolean;
}

/**
 * The gates that must be passed before a step may be recorded, and are not. A step that applies
 * power waits for every gate before it, and so does any other.
 * @param outcomes by the key of the step; a missing one is not done
 * @throws RangeError when the procedure has no such step
 */
export function gatesBefore<Step extends GatedStep>(
  steps: readonly Step[],
  key: string,
  outcomes: ReadonlyMap<string, StepOutcome>,
): Step[] {
  const place = steps.findIndex((step) => step.key === key);
  if (place === -1) throw new RangeError(`the procedure has no step ${key}`);
  return steps.slice(0, place).filter((step) => step.isGate && outcomes.get(step.key) !== 'PASSED');
}

/** Whether every step, gate or not, is passed. */
export const isWhollyPassed = (
  steps: readonly GatedStep[],
  outcomes: ReadonlyMap<string, StepOutcome>,
): boolean => steps.every(({ key }) => outcomes.get(key) === 'PASSED');
