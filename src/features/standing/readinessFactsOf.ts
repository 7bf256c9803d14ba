import type {
  AccessoryFacts,
  ItemFacts,
  ReadinessFacts,
} from '../../domain/readiness/readinessFacts.js';
import type { PositionStanding } from '../../domain/completeness/positionStanding.js';
import type { ItemRecords } from './itemRecords.js';
import type { StandingItem } from './standingItems.reads.js';

/** What readiness is judged by, for one item among records that were read for many. */
export function readinessFactsOf(
  item: StandingItem,
  positions: readonly PositionStanding[],
  records: ItemRecords,
): ReadinessFacts {
  const checks = records.finalChecks.get(item.id);
  const services = records.services.get(item.id) ?? [];
  const needed = records.requiredRoles.get(item.id) ?? [];
  return {
    rig: factsOf(item, records),
    positions,
    requiredRoles: needed.map(({ role }) => ({
      roleCode: role,
      roleName: role.toLowerCase().replaceAll('_', ' '),
      accessoryIds: services
        .filter((service) => service.role === role)
        .map(({ accessoryId }) => accessoryId),
    })),
    accessories: nearby(
      services.map(({ accessoryId }) => accessoryId),
      records,
    ),
    procedures: checks?.procedures ?? [],
    mayLackFinalChecks: item.kind === 'ACCESSORY',
    finalChecks: checks?.finalChecks ?? [],
  };
}

/** Accessories with everything that they are housed in, step by step. */
export function nearby(ids: readonly string[], records: ItemRecords): AccessoryFacts[] {
  const found = new Map<string, AccessoryFacts>();
  const queue = [...ids];
  for (let id = queue.pop(); id !== undefined; id = queue.pop()) {
    const item = records.items.get(id);
    if (!item || found.has(id)) continue;
    found.set(id, { ...factsOf(item, records), housedInId: item.housedInId });
    if (item.housedInId !== null) queue.push(item.housedInId);
  }
  return [...found.values()];
}

function factsOf(item: StandingItem, records: ItemRecords): ItemFacts {
  return {
    itemId: item.id,
    name: shownName(item),
    isRetired: item.retiredAt !== null,
    isInHand: item.retiredAt === null,
    findings: records.findings.get(item.id) ?? [],
    hazards: records.hazards.get(item.id) ?? [],
    components: records.components.get(item.id) ?? [],
  };
}

/** `A-003 Corner speaker`, so that a blocker says which one is meant. */
const shownName = ({ inventoryNumber, name, model }: StandingItem): string =>
  [inventoryNumber, name ?? model].filter((part) => part !== null).join(' ');
