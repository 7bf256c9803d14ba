import { recordId } from '../../api/kit/globalId.js';
import { isGiven } from '../../api/kit/isGiven.js';
import { Checklist } from '../../db/checklist.js';
import { insertRow, insertRows } from '../../db/insertRow.js';
import { Refusal } from '../../db/refusal.js';
import { rowSourceInWork } from '../../db/rowSource.js';
import type { UnitOfWork } from '../../db/unitOfWork.js';
import { localDateProblems } from '../../domain/dates/localDateProblems.js';
import { readPlans } from '../forecast/plans.reads.js';
import { readMoney } from '../money/readMoney.js';
import { paceOfPerson } from '../pace/paceOfPerson.js';
import { oneProjectAtATime } from '../projects/oneProjectAtATime.js';
import { openProjectFor } from '../projects/openProjectFor.js';
import type { ProjectEntity } from '../projects/project.entity.js';
import { BaselineEntity } from './baseline.entity.js';
import type { KeepBaselineInput } from './baseline.inputs.js';
import { BaselineTaskEntity } from './baselineTask.entity.js';
import { todayAtBench } from '../pace/todayAtBench.js';
import { planTasks } from './planTasks.js';

const hoursInWeek = 168;

export async function keepBaseline(work: UnitOfWork, input: KeepBaselineInput): Promise<string> {
  const projectId = recordId('Project', input.projectId, ['projectId']);
  await oneProjectAtATime(work, projectId);
  const project = await openProjectFor(work, projectId, ['projectId']);
  const source = rowSourceInWork(work);
  const nowMs = Date.parse(work.now);
  const check = new Checklist(work);
  const startsOn = input.startsOn ?? (await todayAtBench(source, nowMs)).today;
  for (const problem of localDateProblems(startsOn)) check.refuse(problem, ['startsOn']);
  const budget = budgetOf(check, input, project);
  const note = check.text(input.note, ['note']);
  const [plan] = await readPlans(source, [projectId]);
  const of = plan?.personId ? await paceOfPerson(source, plan.personId, nowMs) : null;
  const hoursPerWeek = input.hoursPerWeek ?? of?.pace.meanHours ?? 0;
  check.that(
    hoursPerWeek > 0 && hoursPerWeek <= hoursInWeek,
    isGiven(input.hoursPerWeek)
      ? 'Give the hours a week as a number above 0 and up to 168.'
      : 'Give the hours a week: no pace is known yet from the sessions of whoever does the work.',
    ['hoursPerWeek'],
  );
  check.done();
  const tasks = await planTasks(source, project, {
    startsOn,
    hoursPerWeek,
    isAway: of?.isAway ?? (() => false),
  });
  if (tasks.length === 0) {
    throw Refusal.conflict('The project has no task to plan. Add its tasks first.', ['projectId']);
  }
  const baseline = await insertRow(work, BaselineEntity, {
    projectId,
    keptAt: work.now,
    startsOn,
    minutesPerWeek: Math.max(1, Math.round(hoursPerWeek * 60)),
    ...budget,
    note,
  });
  await insertRows(
    work,
    BaselineTaskEntity,
    tasks.map(({ taskId, budgetHours, plannedStartOn, plannedFinishOn }, index) => ({
      baselineId: baseline.id,
      taskId,
      ordinal: index + 1,
      budgetMinutes: Math.round(budgetHours * 60),
      plannedStartOn,
      plannedFinishOn,
    })),
  );
  return baseline.id;
}

function budgetOf(check: Checklist, { budget }: KeepBaselineInput, project: ProjectEntity) {
  if (!isGiven(budget)) {
    const { ceilingMinorUnits, ceilingCurrency } = project;
    return { budgetMinorUnits: ceilingMinorUnits, budgetCurrency: ceilingCurrency };
  }
  const { minorUnits, currency } = readMoney(check, budget, ['budget']);
  check.that(minorUnits >= 0, 'A budget cannot be below zero.', ['budget', 'amount']);
  return { budgetMinorUnits: minorUnits, budgetCurrency: currency };
}
