import { groupedBy } from '../../db/groupedBy.js';
import type { RowSource } from '../../db/rowSource.js';
import { readFindings } from '../findings/findingFacts.reads.js';
import { readHazards } from '../hazards/hazardFacts.reads.js';
import { readLastInspections } from '../inspections/lastInspections.reads.js';
import { readCompletenessFacts } from '../inspections/completenessFacts.reads.js';
import { readComponentStates } from '../parts/componentFacts.reads.js';
import { readFinalChecks } from '../readiness/finalCheckFacts.reads.js';
import { readRequiredRoles, readServices, readStandingItems } from './standingItems.reads.js';

/** Everything that the readiness of some items rests on, and that of what serves them. */
export type ReadinessRecords = Awaited<ReturnType<typeof readReadinessRecords>>;

/** A fixed number of statements, however many items. */
export async function readReadinessRecords(source: RowSource, itemIds: readonly string[]) {
  const items = await readStandingItems(source, itemIds);
  const services = await readServices(source, itemIds);
  return recordsAround(source, { itemIds, items, services });
}

/** What lies around items already read. @param at as things stood then; left out: as they are now. */
export async function recordsAround(
  source: RowSource,
  around: {
    itemIds: readonly string[];
    items: Awaited<ReturnType<typeof readStandingItems>>;
    services: Awaited<ReturnType<typeof readServices>>;
  },
  at?: string,
) {
  const { itemIds, items, services } = around;
  const nearIds = items.map(({ id }) => id);
  return {
    items: new Map(items.map((item) => [item.id, item])),
    services: groupedBy(services, ({ rigId }) => rigId),
    requiredRoles: groupedBy(await readRequiredRoles(source, itemIds), ({ itemId }) => itemId),
    findings: await readFindings(source, nearIds, at),
    hazards: await readHazards(source, nearIds, at),
    components: await readComponentStates(source, nearIds, at),
    finalChecks: await readFinalChecks(source, nearIds, at),
    completeness: await readCompletenessFacts(source, nearIds),
    // Grounds for what is met; the kept standing has no use for them.
    inspections: at === undefined ? null : await readLastInspections(source, nearIds, at),
  };
}
