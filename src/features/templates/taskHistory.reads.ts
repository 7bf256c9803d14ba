import { listParameter, type Dialect } from '../../db/dialect.js';
import type { RowSource } from '../../db/rowSource.js';
import { nameKey } from '../../domain/nameKey.js';
import { readWorkedHours } from './workedHours.reads.js';

interface Titled {
  title: string;
  kind: string;
}

/** Finished tasks are the same work when their titles read the same and their kinds agree. */
export const taskHistoryKey = ({ title, kind }: Titled): string => `${kind} ${nameKey(title)}`;

/**
 * What finished tasks of these kinds took, in hours above 0, by `taskHistoryKey`.
 * Those finished without a session say nothing about hours.
 */
export async function readTaskHistory(
  query: RowSource['rows'],
  dialect: Dialect,
  tasks: readonly Titled[],
  nowMs: number,
): Promise<Map<string, number[]>> {
  const wanted = new Set(tasks.map(taskHistoryKey));
  const done = await query<Titled & { id: string }>(
    `SELECT id AS "id", title AS "title", kind AS "kind" FROM task
     WHERE status = 'DONE' AND ${dialect.isAnyOf('kind')} ORDER BY id`,
    [listParameter([...new Set(tasks.map(({ kind }) => kind))])],
  );
  const same = done.filter((task) => wanted.has(taskHistoryKey(task)));
  const hours = await readWorkedHours(
    query,
    dialect,
    same.map(({ id }) => id),
    nowMs,
  );
  const history = new Map<string, number[]>();
  for (const task of same) {
    const worked = hours.get(task.id) ?? 0;
    if (worked <= 0) continue;
    const key = taskHistoryKey(task);
    const known = history.get(key);
    if (known) known.push(worked);
    else history.set(key, [worked]);
  }
  return history;
}
