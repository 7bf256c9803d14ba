import type { Blocker } from './blocker.js';
import { componentBlockers } from './componentBlockers.js';
import { finalCheckStanding, type CheckLapse } from './finalCheckStanding.js';
import { itemBlockers } from './itemBlockers.js';
import { positionBlockers } from './positionBlockers.js';
import type { AccessoryFacts } from './readinessFacts.js';

export interface Serviceability {
  readonly accessoryId: string;
  readonly isServiceable: boolean;
  /** Whether an open or uncleared hazard is among the reasons. */
  readonly carriesHazard: boolean;
  /** Why it cannot serve; empty when it can. */
  readonly reasons: readonly Blocker[];
  /** Its passed final checks and those of its housing, that will lapse or have. */
  readonly lapses: readonly CheckLapse[];
}

/**
 * Whether an accessory can serve a rig: not retired, in hand, no open blocking finding, no hazard
 * open or uncleared, no rejected or suspect component, no required position empty, no final check
 * failed, and the same of whatever it is housed in. The clock is left out: see `lapses`.
 */
export function serviceability(
  accessoryId: string,
  accessories: ReadonlyMap<string, AccessoryFacts>,
): Serviceability {
  return judge(accessoryId, accessories, []);
}

function judge(
  accessoryId: string,
  accessories: ReadonlyMap<string, AccessoryFacts>,
  housedInside: readonly string[],
): Serviceability {
  const accessory = accessories.get(accessoryId);
  if (accessory === undefined) return result(accessoryId, [notRecorded(accessoryId)]);
  if (housedInside.includes(accessoryId)) return result(accessoryId, [inItself(accessory)]);
  const { reasons, lapses } = ownStanding(accessory);
  if (accessory.housedInId !== null) {
    const path = [...housedInside, accessoryId];
    const housing = judge(accessory.housedInId, accessories, path);
    const housingName = accessories.get(accessory.housedInId)?.name ?? accessory.housedInId;
    if (!housing.isServiceable) reasons.push(housingBlocker(accessory, housingName, housing));
    lapses.push(...housing.lapses);
  }
  return result(accessoryId, reasons, lapses);
}

/** What stands against an accessory itself, leaving out its housing and the clock. */
export function ownStanding(accessory: AccessoryFacts): {
  reasons: Blocker[];
  lapses: CheckLapse[];
} {
  const { itemId, procedures = [], finalChecks = [], positions = [] } = accessory;
  // An accessory with no final check named may serve.
  const checks =
    procedures.length === 0 ? null : finalCheckStanding(itemId, procedures, finalChecks);
  const reasons = [
    ...itemBlockers(accessory),
    ...componentBlockers(accessory.components),
    ...positionBlockers(positions),
    ...(checks?.blockers ?? []),
  ];
  return { reasons, lapses: [...(checks?.lapses ?? [])] };
}

function result(
  accessoryId: string,
  reasons: readonly Blocker[],
  lapses: readonly CheckLapse[] = [],
): Serviceability {
  const carriesHazard = reasons.some((reason) => reason.level === 'DO_NOT_CONNECT');
  return { accessoryId, isServiceable: reasons.length === 0, carriesHazard, reasons, lapses };
}

function housingBlocker(
  accessory: AccessoryFacts,
  housingName: string,
  housing: Serviceability,
): Blocker {
  const why = housing.reasons.map((reason) => reason.message).join(' ');
  const mend = housing.reasons.map((reason) => reason.wouldBeMetBy).join(' ');
  return {
    code: 'HOUSING_NOT_SERVICEABLE',
    level: housing.carriesHazard ? 'DO_NOT_CONNECT' : 'NOT_READY',
    message: `“${accessory.name}” is housed in “${housingName}”, which cannot serve: ${why}`,
    subjectKind: 'ITEM',
    subjectId: housing.accessoryId,
    wouldBeMetBy: `${mend} Or house “${accessory.name}” elsewhere.`,
  };
}

export function notRecorded(accessoryId: string): Blocker {
  return {
    code: 'ACCESSORY_NOT_RECORDED',
    level: 'NOT_READY',
    message: `Accessory ${accessoryId} is named but not recorded.`,
    subjectKind: 'ITEM',
    subjectId: accessoryId,
    wouldBeMetBy: `Record accessory ${accessoryId}, or name another.`,
  };
}

export function inItself(accessory: AccessoryFacts): Blocker {
  return {
    code: 'HOUSED_IN_ITSELF',
    level: 'NOT_READY',
    message: `“${accessory.name}” is recorded as housed, step by step, in itself.`,
    subjectKind: 'ITEM',
    subjectId: accessory.itemId,
    wouldBeMetBy: `Mend what “${accessory.name}” is housed in.`,
  };
}
