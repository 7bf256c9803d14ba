import { listParameter } from '../../db/dialect.js';
import type { Reader } from '../../db/reader.js';
import { workedIntervals } from '../../domain/hours/workedIntervals.js';
import { sessionRowColumns, withBreaks, type SessionRow } from '../work/sessionRows.reads.js';

/** Hours of some finished sessions, net of breaks, to two places. */
export async function readSessionHours(
  reader: Reader,
  ids: readonly string[],
  nowMs: number,
): Promise<Map<string, number>> {
  const rows = await reader.rows<SessionRow>(
    `SELECT ${sessionRowColumns} FROM work_session
     LEFT JOIN task ON task.id = work_session.task_id
     WHERE ${reader.dialect.isAnyOf('work_session.id')}`,
    [listParameter(ids)],
  );
  const sessions = await withBreaks(reader.rows.bind(reader), reader.dialect, rows);
  return new Map(
    sessions.map((session) => {
      const ms = workedIntervals(session, nowMs).reduce(
        (sum, { startedAtMs, endedAtMs }) => sum + endedAtMs - startedAtMs,
        0,
      );
      return [session.id, Math.round(ms / 36_000) / 100];
    }),
  );
}
