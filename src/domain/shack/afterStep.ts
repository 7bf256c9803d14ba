import { readyShack, type ShackModel } from './shackModel.js';
import { largestAtOnce } from './largestAtOnce.js';
import type { ShackStep } from './shackSteps.js';

/** How many rigs are ready: each looked at alone, and together. */
export interface ReadyCount {
  readonly alone: number;
  readonly atOnce: number;
  /** The count at once is the largest there is; else no larger set was found in the time allowed. */
  readonly isProven: boolean;
}

export function readyCount(model: ShackModel): ReadyCount {
  const shack = readyShack(model);
  const { served, isProven } = largestAtOnce(shack);
  return { alone: shack.rigs.length, atOnce: served.size, isProven };
}

/** The collection as it would be once a step is done. */
export function afterStep(model: ShackModel, step: ShackStep): ShackModel {
  const items = new Map(model.items);
  const item = items.get(step.itemId);
  if (item !== undefined && step.settles.length > 0) {
    const blockers = item.blockers.filter((blocker) => !step.settles.includes(blocker));
    items.set(step.itemId, { ...item, blockers });
  }
  const { adds } = step;
  if (adds === null) return { ...model, items };
  const itemId = 'to be got';
  items.set(itemId, { itemId, name: itemId, blockers: [], housedInId: null });
  const rigs = model.rigs.map((rig) => ({
    ...rig,
    needs: rig.needs.map((need) =>
      need.roleCode === adds.roleCode && adds.rigIds.includes(rig.rigId)
        ? { ...need, accessoryIds: [...need.accessoryIds, itemId] }
        : need,
    ),
  }));
  return { items, rigs };
}
