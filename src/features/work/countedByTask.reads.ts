import { listParameter } from '../../db/dialect.js';
import { groupedBy } from '../../db/groupedBy.js';
import type { RowSource } from '../../db/rowSource.js';
import { countedSlices, type Slice } from '../../domain/hours/countedSlices.js';
import { sessionRowColumns, withBreaks, type SessionRow } from './sessionRows.reads.js';
import { readSessionsAround } from './sessionsAround.reads.js';

/**
 * The counted time of finished sessions on some tasks, by task, in four statements: a minute of one
 * person once, as in the hours of the items.
 */
export async function readCountedByTask(
  source: RowSource,
  taskIds: readonly string[],
  nowMs: number,
): Promise<Map<string, Slice[]>> {
  const query = source.rows.bind(source);
  const own = await query<SessionRow>(
    `SELECT ${sessionRowColumns} FROM work_session
     LEFT JOIN task ON task.id = work_session.task_id
     WHERE work_session.ended_at IS NOT NULL AND ${source.dialect.isAnyOf('work_session.task_id')}`,
    [listParameter(taskIds)],
  );
  const around = await readSessionsAround(query, source.dialect, own);
  const sessions = await withBreaks(query, source.dialect, [
    ...own,
    ...around.filter(({ endedAt }) => endedAt !== null),
  ]);
  const wanted = new Set<string | null>(taskIds);
  const slices = countedSlices(sessions, nowMs).slices.filter(({ taskId }) => wanted.has(taskId));
  return groupedBy(slices, ({ taskId }) => taskId as string);
}

/** Hours of some slices. */
export const hoursOfSlices = (slices: readonly Slice[] | undefined): number =>
  (slices ?? []).reduce(
    (sum, { startedAtMs, endedAtMs }) => sum + (endedAtMs - startedAtMs) / 3_600_000,
    0,
  );
