import type { RunStep } from './stepDraft.js';

/** The steps that may be recorded now: not passed yet, and no gate before them is open. */
export function stepsOpen(steps: readonly RunStep[]): RunStep[] {
  const gate = steps.findIndex(({ plan, outcome }) => plan.isGate && outcome !== 'PASSED');
  const reached = gate === -1 ? steps : steps.slice(0, gate + 1);
  return reached.filter(({ outcome }) => outcome !== 'PASSED');
}
