import { recordId } from '../../api/kit/globalId.js';
import { changeRow } from '../../db/changeRow.js';
import { Checklist } from '../../db/checklist.js';
import { Refusal } from '../../db/refusal.js';
import type { UnitOfWork } from '../../db/unitOfWork.js';
import { earningRuleProblems } from '../../domain/earnedValue/earningRuleProblems.js';
import { checkEvidence } from './checkEvidence.js';
import { TaskEntity } from './task.entity.js';
import type { StatePercentInput } from './taskProgress.inputs.js';

/** A stated percentage is worth what shows it. Stating one above 0 begins the task. */
export async function statePercent(work: UnitOfWork, input: StatePercentInput): Promise<string> {
  const id = recordId('Task', input.id);
  const { version, percent } = input;
  const check = new Checklist(work);
  const evidence = await checkEvidence(work, check, input);
  const asRule = { kind: 'PERCENT_WITH_EVIDENCE', percent, evidence: null } as const;
  for (const problem of earningRuleProblems(asRule)) {
    check.refuse(problem.message, problem.path.slice());
  }
  check.done();
  const task = await work.manager.findOneBy(TaskEntity, { id });
  if (!task) throw Refusal.notFound('task');
  const { title, status, earningRule, startedAt } = task;
  if (earningRule !== 'PERCENT_WITH_EVIDENCE') {
    throw Refusal.conflict(
      `“${title}” earns by ${earningRule}. Change its rule to PERCENT_WITH_EVIDENCE first.`,
      ['id'],
    );
  }
  if (status === 'DONE' || status === 'DROPPED') {
    throw Refusal.conflict(`“${title}” is ${status.toLowerCase()}. Reopen it first.`, ['id']);
  }
  const begins = status === 'NOT_STARTED' && percent > 0;
  await changeRow(work, TaskEntity, id, version, {
    percentComplete: percent,
    ...evidence,
    ...(begins && { status: 'IN_PROGRESS' as const, startedAt: startedAt ?? work.now }),
  });
  return id;
}
