import type { Dialect } from '../../db/dialect.js';
import { listParameter } from '../../db/dialect.js';
import type { RowSource } from '../../db/rowSource.js';
import type { EarningRule, WeightedStep } from '../../domain/earnedValue/earningRule.js';
import type { ThreePointEstimate } from '../../domain/estimates/threePointEstimate.js';
import type { ProjectStatus } from '../projects/projectStatus.js';
import { earningRuleOf } from './earningRuleOf.js';
import type { EarningRuleKind } from './earningRuleKind.js';
import type { EstimateDistribution } from './estimateDistribution.js';
import type { ProgressEvidenceKind } from './progressEvidenceKind.js';
import { estimateOf } from './estimateOf.js';
import type { TaskKind } from './taskKind.js';
import type { TaskStatus } from './taskStatus.js';

/** A task with all that the arithmetic of an item asks of it. */
export interface TaskOfItem {
  id: string;
  itemId: string;
  projectId: string;
  projectStatus: ProjectStatus;
  title: string;
  kind: TaskKind;
  state: TaskStatus;
  estimate: ThreePointEstimate;
  earningRule: EarningRule;
  predecessorIds: string[];
  /** Its place on the item, from which its trials are drawn: the same however often it is loaded. */
  drawKey: string;
}

interface TaskRow {
  id: string;
  ordinal: number;
  itemId: string;
  projectId: string;
  projectStatus: ProjectStatus;
  title: string;
  kind: TaskKind;
  state: TaskStatus;
  optimisticMinutes: number;
  likelyMinutes: number;
  pessimisticMinutes: number;
  estimateDistribution: EstimateDistribution;
  earningRule: EarningRuleKind;
  percentComplete: number | null;
  percentEvidence: string | null;
  percentEvidenceKind: ProgressEvidenceKind | null;
  percentEvidenceReadingId: string | null;
  percentEvidenceAttachmentId: string | null;
}

const ofItems = (dialect: Dialect): string =>
  `JOIN project ON project.id = task.project_id WHERE ${dialect.isAnyOf('project.item_id')}`;

/** Every task of every project of some items, by project and ordinal, in three statements. */
export async function readTasksForItems(
  query: RowSource['rows'],
  dialect: Dialect,
  itemIds: readonly string[],
): Promise<TaskOfItem[]> {
  const ids = listParameter(itemIds);
  const tasks = await query<TaskRow>(
    `SELECT task.id AS "id", task.ordinal AS "ordinal", project.item_id AS "itemId", project.id AS "projectId",
       project.status AS "projectStatus", task.title AS "title", task.kind AS "kind",
       task.status AS "state", task.optimistic_minutes AS "optimisticMinutes",
       task.likely_minutes AS "likelyMinutes", task.pessimistic_minutes AS "pessimisticMinutes",
       task.estimate_distribution AS "estimateDistribution",
       task.earning_rule AS "earningRule", task.percent_complete AS "percentComplete",
       task.percent_evidence AS "percentEvidence",
       task.percent_evidence_kind AS "percentEvidenceKind",
       task.percent_evidence_reading_id AS "percentEvidenceReadingId",
       task.percent_evidence_attachment_id AS "percentEvidenceAttachmentId"
     FROM task ${ofItems(dialect)} ORDER BY project.id, task.ordinal, task.id`,
    [ids],
  );
  const steps = await query<{ taskId: string; name: string; weight: number; isDone: number }>(
    `SELECT task_step.task_id AS "taskId", task_step.title AS "name", task_step.weight AS "weight",
       CASE WHEN task_step.done_at IS NULL THEN 0 ELSE 1 END AS "isDone"
     FROM task_step JOIN task ON task.id = task_step.task_id ${ofItems(dialect)}
     ORDER BY task_step.task_id, task_step.ordinal, task_step.id`,
    [ids],
  );
  const edges = await query<{ taskId: string; predecessorId: string }>(
    `SELECT link.task_id AS "taskId", link.predecessor_id AS "predecessorId"
     FROM task_predecessor AS link JOIN task ON task.id = link.task_id ${ofItems(dialect)}
     ORDER BY link.id`,
    [ids],
  );
  const stepsByTask = new Map<string, WeightedStep[]>(tasks.map(({ id }) => [id, []]));
  for (const { taskId, name, weight, isDone } of steps) {
    stepsByTask.get(taskId)?.push({ name, weight, isDone: isDone === 1 });
  }
  const predecessorsByTask = new Map<string, string[]>(tasks.map(({ id }) => [id, []]));
  for (const { taskId, predecessorId } of edges)
    predecessorsByTask.get(taskId)?.push(predecessorId);
  const drawKeys = drawKeysOf(tasks);
  return tasks.map((row) => ({
    id: row.id,
    itemId: row.itemId,
    projectId: row.projectId,
    projectStatus: row.projectStatus,
    title: row.title,
    kind: row.kind,
    state: row.state,
    estimate: estimateOf(row),
    earningRule: earningRuleOf(row, stepsByTask.get(row.id) ?? []),
    predecessorIds: predecessorsByTask.get(row.id) ?? [],
    drawKey: drawKeys.get(row.id) ?? row.id,
  }));
}

/** Project by project in the order of their making, then by ordinal; unique within an item. */
function drawKeysOf(tasks: readonly TaskRow[]): Map<string, string> {
  const places = new Map<string, number>();
  const projectsOf = new Map<string, number>();
  const taken = new Set<string>();
  return new Map(
    tasks.map(({ id, itemId, projectId, ordinal }) => {
      const place = places.get(projectId) ?? projectsOf.get(itemId) ?? 0;
      if (!places.has(projectId)) projectsOf.set(itemId, place + 1);
      places.set(projectId, place);
      const key = `${place}/${ordinal}`;
      const isTaken = taken.has(itemId + key);
      taken.add(itemId + key);
      return [id, isTaken ? `${key}/${id}` : key];
    }),
  );
}
