import { listParameter, type Dialect } from '../../db/dialect.js';
import type { Query } from '../../db/query.js';
import { longestSessionMs } from './sessionBounds.js';
import { sessionRowColumns, type SessionRow } from './sessionRows.reads.js';

const endOfTime = '9999-12-31T23:59:59.999Z';

/**
 * Every other session of the same persons that shares time with one of these, in one statement.
 *
 * Each session is looked for within the time that a session can last before it, so that the index
 * on person and start is enough however long the history is.
 */
export async function readSessionsAround(
  query: Query,
  dialect: Dialect,
  sessions: readonly SessionRow[],
): Promise<SessionRow[]> {
  if (sessions.length === 0) return [];
  const windows = sessions.map(
    ({ personId, startedAt, endedAt }) =>
      personId +
      startedAt +
      (endedAt ?? endOfTime) +
      new Date(Date.parse(startedAt) - longestSessionMs).toISOString(),
  );
  const around = await query<SessionRow>(
    `SELECT ${sessionRowColumns}
     FROM ${dialect.eachText} AS stretch
     JOIN work_session ON work_session.person_id = substr(stretch.value, 1, 36)
       AND work_session.started_at < substr(stretch.value, 61, 24)
       AND work_session.started_at >= substr(stretch.value, 85, 24)
       AND (work_session.ended_at IS NULL OR work_session.ended_at > substr(stretch.value, 37, 24))
     LEFT JOIN task ON task.id = work_session.task_id
     UNION
     SELECT ${sessionRowColumns}
     FROM ${dialect.eachText} AS stretch
     JOIN work_session ON work_session.person_id = substr(stretch.value, 1, 36)
       AND work_session.ended_at IS NULL
       AND work_session.started_at < substr(stretch.value, 61, 24)
     LEFT JOIN task ON task.id = work_session.task_id`,
    [listParameter(windows), listParameter(windows)],
  );
  const own = new Set(sessions.map(({ id }) => id));
  return around.filter(({ id }) => !own.has(id));
}
