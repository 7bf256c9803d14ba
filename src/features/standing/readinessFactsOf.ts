import type {
  AccessoryFacts,
  ItemFacts,
  ReadinessFacts,
} from '../../domain/readiness/readinessFacts.js';
import type { PositionStanding } from '../../domain/completeness/positionStanding.js';
import { fitOutCompleteness } from '../../domain/completeness/fitOutCompleteness.js';
import type { ReadinessRecords } from './readinessRecords.js';
import type { StandingItem } from './standingItems.reads.js';

/** What readiness is judged by, for one item among records that were read for many. */
export function readinessFactsOf(
  item: StandingItem,
  positions: readonly PositionStanding[],
  records: ReadinessRecords,
  nowMs: number,
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
      nowMs,
    ),
    procedures: checks?.procedures ?? [],
    mayLackFinalChecks: item.kind === 'ACCESSORY',
    finalChecks: checks?.finalChecks ?? [],
  };
}

/** Accessories with everything that they are housed in, step by step. */
export function nearby(
  ids: readonly string[],
  records: ReadinessRecords,
  nowMs: number,
): AccessoryFacts[] {
  const found = new Map<string, AccessoryFacts>();
  const queue = [...ids];
  for (let id = queue.pop(); id !== undefined; id = queue.pop()) {
    const item = records.items.get(id);
    if (!item || found.has(id)) continue;
    const { procedures = [], finalChecks = [] } = records.finalChecks.get(id) ?? {};
    const positions = positionsOf(id, records, nowMs);
    const { housedInId } = item;
    found.set(id, { ...factsOf(item, records), housedInId, positions, procedures, finalChecks });
    if (item.housedInId !== null) queue.push(item.housedInId);
  }
  return [...found.values()];
}

/** The positions of an item's fit-out, as they stand at an instant. */
export function positionsOf(
  itemId: string,
  records: ReadinessRecords,
  nowMs: number,
): readonly PositionStanding[] {
  const facts = records.completeness.get(itemId);
  if (facts === undefined || facts.fitOut.length === 0) return [];
  return fitOutCompleteness(facts.fitOut, facts.checks, facts.fittings, nowMs).positions;
}

function factsOf(item: StandingItem, records: ReadinessRecords): ItemFacts {
  return {
    itemId: item.id,
    name: shownName(item),
    isRetired: item.retiredAt !== null,
    isInHand: item.retiredAt === null && item.isYetToCome !== true && !item.isAway,
    lastInspection: records.inspections?.get(item.id) ?? null,
    findings: records.findings.get(item.id) ?? [],
    hazards: records.hazards.get(item.id) ?? [],
    components: records.components.get(item.id) ?? [],
    ...(item.kind === 'RIG' && {
      identity: { modelName: item.model, serialNumber: item.serialNumber },
    }),
  };
}

/** `A-003 Corner speaker`, so that a blocker says which one is meant. */
const shownName = ({ inventoryNumber, name, model }: StandingItem): string =>
  [inventoryNumber, name ?? model].filter((part) => part !== null).join(' ');
