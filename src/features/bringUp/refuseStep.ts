import { Refusal } from '../../db/refusal.js';
import { rowSourceInWork } from '../../db/rowSource.js';
import type { UnitOfWork } from '../../db/unitOfWork.js';
import { gatesBefore } from '../../domain/bringUp/gatesBefore.js';
import { ItemEntity } from '../items/item.entity.js';
import type { BringUpEntity } from './bringUp.entity.js';
import type { ProcedureStep } from './procedureShape.js';
import type { StepOfRun } from './recordedSteps.reads.js';
import { whyNoPower } from './whyNoPower.js';

/**
 * A step that may not be recorded now: the run is not under way, a gate before it is not passed, or
 * it applies power to a set that must not be connected.
 * @returns the step that may
 * @throws Refusal with the reason
 */
export async function refuseStep(
  work: UnitOfWork,
  run: BringUpEntity,
  steps: readonly StepOfRun[],
  stepKey: string,
): Promise<ProcedureStep> {
  if (run.status !== 'UNDER_WAY') {
    const why = {
      STOPPED: `is stopped: ${run.reason ?? ''} Settle the finding, then resume it.`,
      ABANDONED: 'was abandoned. Resume it first.',
      PASSED: 'is passed and closed. Start a new one.',
    }[run.status];
    throw Refusal.conflict(`This bring-up ${why}`, ['bringUpId']);
  }
  const step = run.procedure.steps.find(({ key }) => key === stepKey);
  if (!step) {
    const keys = run.procedure.steps.map(({ key }) => key).join(', ');
    throw Refusal.invalid(
      `“${stepKey.slice(0, 60)}” is no step of this procedure. Its steps are: ${keys}.`,
      ['stepKey'],
    );
  }
  const outcomes = new Map(steps.map((one) => [one.step.key, one.outcome]));
  const open = gatesBefore(run.procedure.steps, stepKey, outcomes);
  if (open.length > 0) {
    const titles = open.map(({ title }) => `“${title}”`).join(', ');
    throw Refusal.conflict(`Pass what comes before “${step.title}” first: ${titles}.`, ['stepKey']);
  }
  if (step.appliesPower) await refusePower(work, run.itemId, step);
  return step;
}

async function refusePower(work: UnitOfWork, itemId: string, step: ProcedureStep): Promise<void> {
  const { name, inventoryNumber } = await work.manager.findOneByOrFail(ItemEntity, { id: itemId });
  const item = { id: itemId, name: name ?? inventoryNumber };
  const reasons = (await whyNoPower(rowSourceInWork(work), [item])).get(itemId) ?? [];
  if (reasons.length === 0) return;
  throw new Refusal(
    reasons.map((reason) => ({
      code: 'CONFLICT',
      message: `Do not connect: “${step.title}” applies power. ${reason}`,
      path: ['stepKey'],
    })),
  );
}
