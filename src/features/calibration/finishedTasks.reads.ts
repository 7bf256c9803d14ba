import type { ApiContext } from '../../api/kit/apiContext.js';
import type { Reader } from '../../db/reader.js';
import { calibration, ratedTask, type Calibration } from '../../domain/calibration/calibration.js';
import type { FinishedTask } from '../../domain/calibration/finishedTask.js';
import type { TaskRevision } from '../../domain/earnedValue/taskRecord.js';
import type { ThreePointEstimate } from '../../domain/estimates/threePointEstimate.js';
import { estimateOf } from '../tasks/estimateOf.js';
import type { TaskEntity } from '../tasks/task.entity.js';
import { readTaskRevisions } from '../tasks/taskRevisions.reads.js';
import { hoursOfSlices, readCountedByTask } from '../work/countedByTask.reads.js';

/** The latest so many: how a person estimated long ago says little of now. */
export const mostFinishedTasks = 500;

export interface EstimateHistory {
  tasks: readonly FinishedTask[];
  calibration: Calibration;
  /** Finished tasks that no hours were recorded on, which say nothing. */
  withoutHours: number;
}

type FinishedRow = Pick<
  TaskEntity,
  | 'id'
  | 'kind'
  | 'optimisticMinutes'
  | 'likelyMinutes'
  | 'pessimisticMinutes'
  | 'estimateDistribution'
  | 'startedAt'
  | 'finishedAt'
>;

const known = new WeakMap<ApiContext, Promise<EstimateHistory>>();

/** What the collector's finished tasks say of the estimates; read once for a request. */
export function estimateHistory(context: ApiContext): Promise<EstimateHistory> {
  const again = known.get(context) ?? readHistory(context.database.reader, context.nowMs);
  known.set(context, again);
  return again;
}

async function readHistory(reader: Reader, nowMs: number): Promise<EstimateHistory> {
  const rows = await reader.rows<FinishedRow>(
    `SELECT id AS "id", kind AS "kind", optimistic_minutes AS "optimisticMinutes",
       likely_minutes AS "likelyMinutes", pessimistic_minutes AS "pessimisticMinutes",
       estimate_distribution AS "estimateDistribution", started_at AS "startedAt",
       finished_at AS "finishedAt"
     FROM task WHERE status = 'DONE' AND finished_at IS NOT NULL
     ORDER BY finished_at DESC, id LIMIT ${mostFinishedTasks}`,
  );
  const ids = rows.map(({ id }) => id);
  const counted = await readCountedByTask(reader, ids, nowMs);
  const revisions = await readTaskRevisions(reader, ids);
  const tasks = rows
    .map((row): FinishedTask => ({
      id: row.id,
      kind: row.kind,
      estimate: estimateAtStart(row, revisions.get(row.id) ?? []),
      actualHours: hoursOfSlices(counted.get(row.id)),
      finishedAtMs: Date.parse(row.finishedAt as string),
    }))
    .filter(({ actualHours }) => actualHours > 0);
  return {
    tasks,
    calibration: calibration(tasks.map(ratedTask)),
    withoutHours: rows.length - tasks.length,
  };
}

/**
 * What the task was thought to take when work on it began: an estimate that was mended while the
 * work went on would always seem right.
 */
function estimateAtStart(row: FinishedRow, revisions: readonly TaskRevision[]): ThreePointEstimate {
  const startMs = Date.parse(row.startedAt ?? (row.finishedAt as string));
  const before = revisions.filter(({ atMs }) => atMs <= startMs).at(-1) ?? revisions[0];
  return before?.estimate ?? estimateOf(row);
}
