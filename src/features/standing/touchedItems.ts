import type { Dialect } from '../../db/dialect.js';
import { listParameter } from '../../db/dialect.js';
import type { RowSource } from '../../db/rowSource.js';
import type { Write } from '../../db/unitOfWork.js';
import { sessionRowColumns, type SessionRow } from '../work/sessionRows.reads.js';
import { readSessionsAround } from '../work/sessionsAround.reads.js';
import { bearsOn, type Subject } from './bearsOn.js';

/** The items whose standing a unit of work bears on, in the order of their ids. */
export async function touchedItems(
  query: RowSource['rows'],
  dialect: Dialect,
  writes: readonly Write[],
): Promise<string[]> {
  const named = namedBy(writes);
  const items = new Set(named.get('item'));
  for (const [subject, sql] of Object.entries(itemsOf(dialect)) as [Subject, string][]) {
    const ids = named.get(subject);
    if (!ids) continue;
    const parameters = Array.from({ length: sql.split('?').length - 1 }, () =>
      listParameter([...ids]),
    );
    for (const { id } of await query<{ id: string }>(sql, parameters)) items.add(id);
  }
  const sessions = named.get('session');
  if (sessions) {
    for (const id of await sharingTime(query, dialect, writes, sessions)) items.add(id);
  }
  if (items.size === 0) return [];
  const served = await query<{ id: string }>(servedRigs(dialect), [listParameter([...items])]);
  for (const { id } of served) items.add(id);
  return [...items].sort();
}

/**
 * A minute of one person counts once: sessions that share time with a changed one may gain or lose
 * by it, as they may by what a corrected session claimed before.
 */
async function sharingTime(
  query: RowSource['rows'],
  dialect: Dialect,
  writes: readonly Write[],
  changedIds: Iterable<string>,
): Promise<string[]> {
  const now = await query<SessionRow>(
    `SELECT ${sessionRowColumns} FROM work_session LEFT JOIN task ON task.id = work_session.task_id
     WHERE ${dialect.isAnyOf('work_session.id')}`,
    [listParameter([...changedIds])],
  );
  const before = writes.flatMap(({ table, before: row }) =>
    table === 'work_session' && row ? [{ ...row, taskKind: 'OTHER' } as unknown as SessionRow] : [],
  );
  const around = await readSessionsAround(query, dialect, [...now, ...before]);
  return [...now, ...around].map(({ itemId }) => itemId);
}

function namedBy(writes: readonly Write[]): Map<Subject, Set<string>> {
  const named = new Map<Subject, Set<string>>();
  for (const { table, before, after } of writes) {
    for (const [field, subject] of bearsOn[table] ?? []) {
      for (const row of [before, after]) {
        const id: unknown = row?.[field];
        if (typeof id !== 'string') continue;
        const ids = named.get(subject) ?? new Set();
        named.set(subject, ids.add(id));
      }
    }
  }
  return named;
}

/** From each subject to its items; every `?` is the list of the subject's ids. */
const itemsOf = (dialect: Dialect): Partial<Record<Subject, string>> => ({
  model: `SELECT id AS "id" FROM item WHERE ${dialect.isAnyOf('model_id')}`,
  partType: `SELECT DISTINCT fitting.item_id AS "id" FROM fitting
    JOIN component ON component.id = fitting.component_id
    WHERE fitting.removed_at IS NULL AND ${dialect.isAnyOf('component.part_type_id')}`,
  component: `SELECT DISTINCT item_id AS "id" FROM fitting WHERE ${dialect.isAnyOf('component_id')}`,
  quantity: `SELECT DISTINCT fitting.item_id AS "id" FROM fitting
    JOIN reading ON reading.component_id = fitting.component_id
    WHERE fitting.removed_at IS NULL AND ${dialect.isAnyOf('LOWER(reading.quantity)')}`,
  lot: `SELECT item_id AS "id" FROM lot_line
    WHERE item_id IS NOT NULL AND ${dialect.isAnyOf('acquisition_id')}`,
  project: `SELECT item_id AS "id" FROM project WHERE ${dialect.isAnyOf('id')}`,
  task: `SELECT project.item_id AS "id" FROM project JOIN task ON task.project_id = project.id
    WHERE ${dialect.isAnyOf('task.id')}`,
});

/** Rigs that an item serves, by itself or as the housing of what serves them. */
const servedRigs = (dialect: Dialect): string =>
  `WITH RECURSIVE housed (id) AS (
     SELECT id FROM item WHERE ${dialect.isAnyOf('id')}
     UNION SELECT item.id FROM item JOIN housed ON item.housed_in_id = housed.id
   )
   SELECT DISTINCT item_service.rig_id AS "id" FROM item_service
   JOIN housed ON item_service.accessory_id = housed.id WHERE item_service.ended_at IS NULL`;
