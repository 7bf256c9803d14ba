import type { AtOnce } from './largestAtOnce.js';
import type { Shack, ShackRig } from './shack.js';

/** A role of a left-out rig for which everything that could fill it is in use elsewhere. */
export interface ContestedRole {
  readonly roleCode: string;
  readonly inUse: readonly { readonly accessoryId: string; readonly byRigId: string }[];
}

/** The roles that keep a rig out of a set: all that could fill them stands at other rigs. */
export function whyLeftOut(
  rig: ShackRig,
  shack: Shack,
  { served }: Pick<AtOnce, 'served'>,
): ContestedRole[] {
  const unit = (id: string) => shack.unitOf.get(id) ?? id;
  const holders = new Map<string, string>();
  for (const [rigId, roles] of served) {
    for (const { accessoryId } of roles) holders.set(unit(accessoryId), rigId);
  }
  return rig.needs
    .map(({ roleCode, accessoryIds }) => ({
      roleCode,
      isAnyFree: accessoryIds.some((id) => !holders.has(unit(id))),
      inUse: accessoryIds.flatMap((accessoryId) => {
        const byRigId = holders.get(unit(accessoryId));
        return byRigId === undefined ? [] : [{ accessoryId, byRigId }];
      }),
    }))
    .filter(({ isAnyFree }) => !isAnyFree)
    .map(({ roleCode, inUse }) => ({ roleCode, inUse }));
}
