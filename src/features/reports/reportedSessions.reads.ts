import type { Reader } from '../../db/reader.js';
import { countedSlices } from '../../domain/hours/countedSlices.js';
import { workedIntervals } from '../../domain/hours/workedIntervals.js';
import { sessionRowColumns, withBreaks, type SessionRow } from '../work/sessionRows.reads.js';
import { readSessionsAround } from '../work/sessionsAround.reads.js';

/** A session that has ended, with all that a list or a report says of it. */
export interface ReportedSession extends SessionRow {
  endedAt: string;
  person: string;
  inventoryNumber: string;
  itemName: string | null;
  project: string | null;
  task: string | null;
  note: string | null;
  changedAt: string;
  version: number;
  breakSeconds: number;
  /** Net of breaks, as claimed. */
  netSeconds: number;
  /** Of those, what counts: a moment of a person counts once. */
  countedSeconds: number;
}

interface Scope {
  from: string;
  until: string;
  itemId: string | null;
}

/**
 * Sessions begun in a stretch of time, in the order of their beginning. A timer that still runs is
 * left out: nobody knows yet what it comes to.
 */
export async function readReportedSessions(
  reader: Reader,
  { from, until, itemId }: Scope,
  nowMs: number,
): Promise<ReportedSession[]> {
  const query = reader.rows.bind(reader);
  const rows = await reader.rows<ReportedSession>(
    `SELECT ${sessionRowColumns}, party.name AS "person",
       item.inventory_number AS "inventoryNumber", item.name AS "itemName",
       project.title AS "project", task.title AS "task", work_session.note AS "note",
       work_session.changed_at AS "changedAt", work_session.version AS "version"
     FROM work_session JOIN party ON party.id = work_session.person_id
     JOIN item ON item.id = work_session.item_id
     LEFT JOIN task ON task.id = work_session.task_id
     LEFT JOIN project ON project.id = task.project_id
     WHERE work_session.started_at >= ? AND work_session.started_at < ?
       AND work_session.ended_at IS NOT NULL ${itemId === null ? '' : 'AND work_session.item_id = ?'}
     ORDER BY work_session.started_at, work_session.id`,
    [from, until, ...(itemId === null ? [] : [itemId])],
  );
  const around = await readSessionsAround(query, reader.dialect, rows);
  const ended = around.filter(({ endedAt }) => endedAt !== null);
  const sessions = await withBreaks(query, reader.dialect, [...rows, ...ended]);
  const counted = new Map<string, number>();
  for (const { sessionId, startedAtMs, endedAtMs } of countedSlices(sessions, nowMs).slices) {
    const seconds = (endedAtMs - startedAtMs) / 1000;
    counted.set(sessionId, (counted.get(sessionId) ?? 0) + seconds);
  }
  return rows.map((row, index) => {
    const session = sessions[index];
    const netSeconds = session
      ? workedIntervals(session, nowMs).reduce(
          (sum, { startedAtMs, endedAtMs }) => sum + (endedAtMs - startedAtMs) / 1000,
          0,
        )
      : 0;
    const spanSeconds = Math.round((Date.parse(row.endedAt) - Date.parse(row.startedAt)) / 1000);
    return {
      ...row,
      breakSeconds: Math.max(0, spanSeconds - netSeconds),
      netSeconds,
      countedSeconds: counted.get(row.id) ?? 0,
    };
  });
}
