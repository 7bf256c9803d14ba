import { listParameter, type Dialect } from '../../db/dialect.js';
import type { RowSource } from '../../db/rowSource.js';
import type { WorkSession } from '../../domain/hours/workSession.js';
import { sessionRowColumns, withBreaks, type SessionRow } from './sessionRows.reads.js';
import { readSessionsAround } from './sessionsAround.reads.js';

/**
 * Every session of some items, and every other session of the same persons that shares time with
 * one of these, whatever its item: so that a minute counts once across items. The sessions of other
 * items are here only for that; their own hours are not complete. Three statements.
 */
export async function readSessionsForItems(
  query: RowSource['rows'],
  dialect: Dialect,
  itemIds: readonly string[],
): Promise<WorkSession[]> {
  const own = await query<SessionRow>(
    `SELECT ${sessionRowColumns} FROM work_session
     LEFT JOIN task ON task.id = work_session.task_id
     WHERE ${dialect.isAnyOf('work_session.item_id')}`,
    [listParameter(itemIds)],
  );
  return withBreaks(query, dialect, [...own, ...(await readSessionsAround(query, dialect, own))]);
}
