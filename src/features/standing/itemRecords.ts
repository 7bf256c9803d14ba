import { groupedBy } from '../../db/groupedBy.js';
import type { RowSource } from '../../db/rowSource.js';
import { readItemLotShares } from '../acquisitions/lotShares.reads.js';
import { readTasksForItems } from '../tasks/tasksForItems.reads.js';
import { readSessionsForItems } from '../work/sessionsForItems.reads.js';
import { readReadinessRecords } from './readinessRecords.js';
import { readExpenses, readProjects } from './standingItems.reads.js';

/** Everything that the standing of some items is computed from, and of what serves them. */
export type ItemRecords = Awaited<ReturnType<typeof readItemRecords>>;

/** A fixed number of statements, however many items. */
export async function readItemRecords(source: RowSource, itemIds: readonly string[]) {
  const query = source.rows.bind(source);
  const ofItem = (row: { itemId: string }) => row.itemId;
  return {
    ...(await readReadinessRecords(source, itemIds)),
    tasks: groupedBy(await readTasksForItems(query, source.dialect, itemIds), ofItem),
    sessions: await readSessionsForItems(query, source.dialect, itemIds),
    lots: groupedBy(await readItemLotShares(source, itemIds), ofItem),
    projects: groupedBy(await readProjects(source, itemIds), ofItem),
    expenses: groupedBy(await readExpenses(source, itemIds), ofItem),
  };
}
