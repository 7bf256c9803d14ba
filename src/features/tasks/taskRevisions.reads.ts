import { listParameter } from '../../db/dialect.js';
import type { RowSource } from '../../db/rowSource.js';
import type { TaskRevision } from '../../domain/earnedValue/taskRecord.js';
import { earningRuleOf } from './earningRuleOf.js';
import { estimateOf } from './estimateOf.js';
import type { TaskEntity } from './task.entity.js';

/**
 * How some tasks stood over time, oldest first, from the history of changes. A task that the
 * history does not hold has none here.
 */
export async function readTaskRevisions(
  { rows, dialect }: RowSource,
  taskIds: readonly string[],
): Promise<Map<string, TaskRevision[]>> {
  const changes = await rows<{ taskId: string; at: string; after: string }>(
    `SELECT change.record_id AS "taskId", change.changed_at AS "at", change."after" AS "after"
     FROM change WHERE change.record_table = 'task' AND change."after" IS NOT NULL
       AND ${dialect.isAnyOf('change.record_id')}
     ORDER BY change.changed_at, change.id`,
    [listParameter(taskIds)],
  );
  const revisions = new Map<string, TaskRevision[]>();
  for (const { taskId, at, after } of changes) {
    const revision = revisionOf(JSON.parse(after) as TaskEntity, Date.parse(at));
    const known = revisions.get(taskId);
    if (known === undefined) revisions.set(taskId, [revision]);
    else known.push(revision);
  }
  return revisions;
}

/** A kept task as the arithmetic takes it; steps are read apart. */
export const revisionOf = (
  task: Pick<
    TaskEntity,
    | 'status'
    | 'optimisticMinutes'
    | 'likelyMinutes'
    | 'pessimisticMinutes'
    | 'estimateDistribution'
    | 'earningRule'
    | 'percentComplete'
    | 'percentEvidence'
  >,
  atMs: number,
): TaskRevision => ({
  atMs,
  state: task.status,
  estimate: estimateOf(task),
  earningRule: earningRuleOf(task, []),
});
