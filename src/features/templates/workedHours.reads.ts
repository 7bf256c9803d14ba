import { listParameter, type Dialect } from '../../db/dialect.js';
import type { RowSource } from '../../db/rowSource.js';
import { countedSlices } from '../../domain/hours/countedSlices.js';
import { sessionRowColumns, withBreaks, type SessionRow } from '../work/sessionRows.reads.js';
import { readSessionsAround } from '../work/sessionsAround.reads.js';

/** Hours that tasks took so far, each moment of a person counted once; four statements for all. */
export async function readWorkedHours(
  query: RowSource['rows'],
  dialect: Dialect,
  taskIds: readonly string[],
  nowMs: number,
): Promise<Map<string, number>> {
  const own = await query<SessionRow>(
    `SELECT ${sessionRowColumns} FROM work_session JOIN task ON task.id = work_session.task_id
     WHERE ${dialect.isAnyOf('work_session.task_id')}`,
    [listParameter(taskIds)],
  );
  const around = await readSessionsAround(query, dialect, own);
  const ended = (await withBreaks(query, dialect, [...own, ...around])).filter(
    ({ endedAtMs }) => endedAtMs !== null,
  );
  const hours = new Map<string, number>();
  for (const { taskId, startedAtMs, endedAtMs } of countedSlices(ended, nowMs).slices) {
    if (taskId === null) continue;
    hours.set(taskId, (hours.get(taskId) ?? 0) + (endedAtMs - startedAtMs) / 3_600_000);
  }
  return hours;
}
