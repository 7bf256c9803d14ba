import { listParameter, type Dialect } from '../../db/dialect.js';
import type { RowSource } from '../../db/rowSource.js';
import type { WorkBreak, WorkSession } from '../../domain/hours/workSession.js';

/** A session as the arithmetic takes it, still without its breaks. */
export interface SessionRow {
  id: string;
  personId: string;
  itemId: string;
  taskId: string | null;
  taskKind: string;
  startedAt: string;
  endedAt: string | null;
  zone: string;
}

/** Select list and source of `SessionRow`; time on the item as a whole is of the kind OTHER. */
export const sessionRowColumns = `work_session.id AS "id", work_session.person_id AS "personId",
  work_session.item_id AS "itemId", work_session.task_id AS "taskId",
  COALESCE(task.kind, 'OTHER') AS "taskKind", work_session.started_at AS "startedAt",
  work_session.ended_at AS "endedAt", work_session.zone AS "zone"`;

/** The breaks of sessions by the session's id, in one statement; nothing for one without any. */
export async function breaksOf(
  query: RowSource['rows'],
  dialect: Dialect,
  sessions: readonly { id: string }[],
): Promise<Map<string, WorkBreak[]>> {
  const breaks = await query<{ sessionId: string; startedAt: string; endedAt: string | null }>(
    `SELECT session_id AS "sessionId", started_at AS "startedAt", ended_at AS "endedAt"
     FROM work_break WHERE ${dialect.isAnyOf('session_id')} ORDER BY started_at, id`,
    [listParameter(sessions.map(({ id }) => id))],
  );
  const bySession = new Map<string, WorkBreak[]>();
  for (const { sessionId, startedAt, endedAt } of breaks) {
    const own = bySession.get(sessionId) ?? [];
    own.push({ startedAtMs: Date.parse(startedAt), endedAtMs: instantOrNull(endedAt) });
    bySession.set(sessionId, own);
  }
  return bySession;
}

/** Adds the breaks of sessions, in one statement. */
export async function withBreaks(
  query: RowSource['rows'],
  dialect: Dialect,
  sessions: readonly SessionRow[],
): Promise<WorkSession[]> {
  const breaks = await breaksOf(query, dialect, sessions);
  return sessions.map((session) => {
    const { id, personId, itemId, taskId, taskKind, zone } = session;
    return { id, personId, itemId, taskId, taskKind, zone, ...timesOf(session, breaks) };
  });
}

type Times = Pick<WorkSession, 'startedAtMs' | 'endedAtMs' | 'breaks'>;

/** When there was work in a session, as the arithmetic takes it. */
export const timesOf = (
  { id, startedAt, endedAt }: Pick<SessionRow, 'id' | 'startedAt' | 'endedAt'>,
  breaks: ReadonlyMap<string, readonly WorkBreak[]>,
): Times => ({
  startedAtMs: Date.parse(startedAt),
  endedAtMs: instantOrNull(endedAt),
  breaks: breaks.get(id) ?? noBreaks,
});

const noBreaks: readonly WorkBreak[] = [];

const instantOrNull = (text: string | null): number | null =>
  text === null ? null : Date.parse(text);
