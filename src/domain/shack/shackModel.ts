import type { Blocker } from '../readiness/blocker.js';
import { lapsedBlocker } from '../readiness/lapsedBlocker.js';
import { readiness } from '../readiness/readiness.js';
import type { AccessoryFacts, ReadinessFacts } from '../readiness/readinessFacts.js';
import { ownStanding } from '../readiness/serviceability.js';
import { housingUnits } from './housingUnits.js';
import type { Shack } from './shack.js';

/** A whole collection at an instant: what stands against each item itself, and who serves whom. */
export interface ShackModel {
  /** Rigs and accessories, by id. */
  readonly items: ReadonlyMap<string, ShackItem>;
  readonly rigs: readonly ShackModelRig[];
}

export interface ShackItem {
  readonly itemId: string;
  readonly name: string;
  /** What stands against the item itself, apart from what serves or houses it. */
  readonly blockers: readonly Blocker[];
  readonly housedInId: string | null;
}

export interface ShackModelRig {
  readonly rigId: string;
  readonly needs: readonly {
    readonly roleCode: string;
    readonly roleName: string;
    readonly accessoryIds: readonly string[];
  }[];
}

/**
 * @param facts of every rig that is looked at; rigs that have left the collection are left out.
 * @param zone IANA zone of the days that the blockers name.
 */
export function shackModel(
  facts: readonly ReadinessFacts[],
  nowMs: number,
  zone = 'UTC',
): ShackModel {
  const items = new Map<string, ShackItem>();
  const present = facts.filter(({ rig }) => !rig.isRetired);
  for (const one of present) {
    const { itemId, name } = one.rig;
    const { blockers } = readiness({ ...one, requiredRoles: [] }, nowMs, zone);
    items.set(itemId, { itemId, name, blockers, housedInId: null });
    for (const accessory of one.accessories) {
      const { itemId: id } = accessory;
      if (!items.has(id)) items.set(id, standing(accessory, nowMs, zone));
    }
  }
  const rigs = present.map(({ rig, requiredRoles }) => ({
    rigId: rig.itemId,
    needs: requiredRoles,
  }));
  return { items, rigs };
}

function standing(accessory: AccessoryFacts, nowMs: number, zone: string): ShackItem {
  const { itemId, name, housedInId } = accessory;
  const { reasons, lapses } = ownStanding(accessory);
  const lapsed = lapses
    .filter(({ lapsesAtMs }) => nowMs >= lapsesAtMs)
    .map((lapse) => lapsedBlocker(lapse, zone));
  return { itemId, name, blockers: [...reasons, ...lapsed], housedInId };
}

/** Whether an accessory can serve: nothing stands against it or anything that it is housed in. */
export function canServe(accessoryId: string, { items }: ShackModel): boolean {
  const seen = new Set<string>();
  for (let id: string | null = accessoryId; id !== null;) {
    const item: ShackItem | undefined = items.get(id);
    if (item === undefined || seen.has(id) || item.blockers.length > 0) return false;
    seen.add(id);
    id = item.housedInId;
  }
  return true;
}

/** The rigs that are ready when each is looked at alone, with what can serve them. */
export function readyShack(model: ShackModel): Shack {
  const rigs = model.rigs
    .filter(({ rigId }) => model.items.get(rigId)?.blockers.length === 0)
    .map(({ rigId, needs }) => ({
      rigId,
      needs: needs.map(({ roleCode, accessoryIds }) => ({
        roleCode,
        accessoryIds: accessoryIds.filter((id) => canServe(id, model)),
      })),
    }))
    .filter(({ needs }) => needs.every(({ accessoryIds }) => accessoryIds.length > 0));
  const housedIn = new Map([...model.items].map(([id, { housedInId }]) => [id, housedInId]));
  return { rigs, unitOf: housingUnits(housedIn) };
}
