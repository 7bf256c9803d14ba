import { gatesBefore } from '../../domain/bringUp/gatesBefore.js';
import type { PowerStanding } from './bringUp.type.js';
import type { StepOfRun } from './recordedSteps.reads.js';

/** What is recorded on applying power: hazards first, whatever the steps say. */
export function powerStanding(
  whyNot: readonly string[],
  steps: readonly StepOfRun[],
): PowerStanding {
  if (whyNot.length > 0) return { answer: 'DO_NOT_CONNECT', reasons: [...whyNot] };
  const plans = steps.map(({ step }) => step);
  const first = plans.find(({ appliesPower }) => appliesPower);
  const outcomes = new Map(steps.map(({ step, outcome }) => [step.key, outcome]));
  const open = first === undefined ? [] : gatesBefore(plans, first.key, outcomes);
  return open.length > 0
    ? { answer: 'GATES_FIRST', reasons: open.map(({ title }) => `“${title}” is not passed.`) }
    : { answer: 'NOTHING_RECORDED_AGAINST', reasons: [] };
}
