import { groupedBy } from '../../db/groupedBy.js';
import type { RowSource } from '../../db/rowSource.js';
import { readItemLotShares } from '../acquisitions/lotShares.reads.js';
import { readOpenFindings } from '../findings/findingFacts.reads.js';
import { readOpenHazards } from '../hazards/hazardFacts.reads.js';
import { readCompletenessFacts } from '../inspections/completenessFacts.reads.js';
import { readComponentStates } from '../parts/componentFacts.reads.js';
import { readFinalChecks } from '../readiness/finalCheckFacts.reads.js';
import { readTasksForItems } from '../tasks/tasksForItems.reads.js';
import { readSessionsForItems } from '../work/sessionsForItems.reads.js';
import {
  readExpenses,
  readProjects,
  readRequiredRoles,
  readServices,
  readStandingItems,
} from './standingItems.reads.js';

/** Everything that the standing of some items is computed from, and of what serves them. */
export type ItemRecords = Awaited<ReturnType<typeof readItemRecords>>;

/** A fixed number of statements, however many items. */
export async function readItemRecords(source: RowSource, itemIds: readonly string[]) {
  const query = source.rows.bind(source);
  const items = await readStandingItems(source, itemIds);
  const nearIds = items.map(({ id }) => id);
  const ofItem = (row: { itemId: string }) => row.itemId;
  return {
    items: new Map(items.map((item) => [item.id, item])),
    services: groupedBy(await readServices(source, itemIds), ({ rigId }) => rigId),
    requiredRoles: groupedBy(await readRequiredRoles(source, itemIds), ofItem),
    findings: await readOpenFindings(source, nearIds),
    hazards: await readOpenHazards(source, nearIds),
    components: await readComponentStates(source, nearIds),
    finalChecks: await readFinalChecks(source, itemIds),
    completeness: await readCompletenessFacts(source, itemIds),
    tasks: groupedBy(await readTasksForItems(query, source.dialect, itemIds), ofItem),
    sessions: await readSessionsForItems(query, source.dialect, itemIds),
    lots: groupedBy(await readItemLotShares(source, itemIds), ofItem),
    projects: groupedBy(await readProjects(source, itemIds), ofItem),
    expenses: groupedBy(await readExpenses(source, itemIds), ofItem),
  };
}
