import type { ApiContext } from '../../api/kit/apiContext.js';
import { listParameter } from '../../db/dialect.js';
import { groupedBy } from '../../db/groupedBy.js';
import type { PlannedTask } from '../../domain/earnedValue/plannedDates.js';
import type { TaskRecord } from '../../domain/earnedValue/taskRecord.js';
import { revisionOf, readTaskRevisions } from '../tasks/taskRevisions.reads.js';
import type { TaskEntity } from '../tasks/task.entity.js';
import { readCountedByTask } from '../work/countedByTask.reads.js';

export interface ProjectRecords {
  tasks: TaskRecord[];
  /** By currency, in minor units. */
  spent: Map<string, number>;
}

export interface KeptPlan {
  id: string;
  projectId: string;
  startsOn: string;
  budgetMinorUnits: number | null;
  budgetCurrency: string | null;
  tasks: PlannedTask[];
}

type TaskRow = TaskEntity & { id: string };

/** Everything that earned value is computed from, of some projects, in a fixed number of statements. */
export async function readProjectRecords(
  { database: { reader }, nowMs }: ApiContext,
  projectIds: readonly string[],
): Promise<Map<string, ProjectRecords>> {
  const { dialect } = reader;
  const rows = await reader.rows<TaskRow>(
    `SELECT id AS "id", project_id AS "projectId", status AS "status",
       optimistic_minutes AS "optimisticMinutes", likely_minutes AS "likelyMinutes",
       pessimistic_minutes AS "pessimisticMinutes",
       estimate_distribution AS "estimateDistribution", earning_rule AS "earningRule",
       percent_complete AS "percentComplete", percent_evidence AS "percentEvidence",
       recorded_at AS "recordedAt"
     FROM task WHERE ${dialect.isAnyOf('project_id')} ORDER BY ordinal, id`,
    [listParameter(projectIds)],
  );
  const ids = rows.map(({ id }) => id);
  const steps = groupedBy(
    await reader.rows<{ taskId: string; name: string; weight: number; doneAt: string | null }>(
      `SELECT task_id AS "taskId", title AS "name", weight AS "weight", done_at AS "doneAt"
       FROM task_step WHERE ${dialect.isAnyOf('task_id')} ORDER BY ordinal, id`,
      [listParameter(ids)],
    ),
    ({ taskId }) => taskId,
  );
  const revisions = await readTaskRevisions(reader, ids);
  const counted = await readCountedByTask(reader, ids, nowMs);
  const expenses = await reader.rows<{ projectId: string; currency: string; amount: number }>(
    `SELECT project_id AS "projectId", currency AS "currency",
       CAST(SUM(amount_minor_units) AS bigint) AS "amount"
     FROM expense WHERE ${dialect.isAnyOf('project_id')} GROUP BY project_id, currency`,
    [listParameter(projectIds)],
  );
  const byProject = groupedBy(rows, ({ projectId }) => projectId);
  const spentBy = groupedBy(expenses, ({ projectId }) => projectId);
  return new Map(
    projectIds.map((projectId) => [
      projectId,
      {
        tasks: (byProject.get(projectId) ?? []).map((row) => ({
          id: row.id,
          revisions: revisions.get(row.id) ?? [revisionOf(row, Date.parse(row.recordedAt))],
          steps: (steps.get(row.id) ?? []).map(({ name, weight, doneAt }) => ({
            name,
            weight,
            doneAtMs: doneAt === null ? null : Date.parse(doneAt),
          })),
          worked: counted.get(row.id) ?? [],
        })),
        spent: new Map(
          (spentBy.get(projectId) ?? []).map(({ currency, amount }) => [currency, Number(amount)]),
        ),
      },
    ]),
  );
}

/** The kept plans of some projects, the latest of each, or the one named. */
export async function readKeptPlans(
  { database: { reader } }: ApiContext,
  projectIds: readonly string[],
  namedId: string | null,
): Promise<Map<string, KeptPlan>> {
  const { dialect } = reader;
  const plans = await reader.rows<Omit<KeptPlan, 'tasks'>>(
    `SELECT id AS "id", project_id AS "projectId", starts_on AS "startsOn",
       budget_minor_units AS "budgetMinorUnits", budget_currency AS "budgetCurrency"
     FROM baseline WHERE ${dialect.isAnyOf('project_id')} ORDER BY kept_at, id`,
    [listParameter(projectIds)],
  );
  const wanted = plans.filter(({ id }) => namedId === null || id === namedId);
  const latest = new Map(wanted.map((plan) => [plan.projectId, plan]));
  const tasks = await reader.rows<
    Omit<PlannedTask, 'budgetHours'> & { baselineId: string; minutes: number }
  >(
    `SELECT baseline_id AS "baselineId", task_id AS "taskId", budget_minutes AS "minutes",
       planned_start_on AS "plannedStartOn", planned_finish_on AS "plannedFinishOn"
     FROM baseline_task WHERE ${dialect.isAnyOf('baseline_id')} ORDER BY ordinal, id`,
    [listParameter([...latest.values()].map(({ id }) => id))],
  );
  const byPlan = groupedBy(tasks, ({ baselineId }) => baselineId);
  return new Map(
    [...latest].map(([projectId, plan]) => [
      projectId,
      {
        ...plan,
        tasks: (byPlan.get(plan.id) ?? []).map(
          ({ taskId, minutes, plannedStartOn, plannedFinishOn }) => ({
            taskId,
            budgetHours: minutes / 60,
            plannedStartOn,
            plannedFinishOn,
          }),
        ),
      },
    ]),
  );
}
