import { checkConditions, type AskedMoment } from './checkConditions.js';
import { allOf, hasState, unmetLeaf, type Condition } from './condition.js';
import { itemConditions } from './itemConditions.js';
import type { AccessoryFacts, RoleFacts } from './readinessFacts.js';
import { bestLevel, worstLevel } from './readinessLevel.js';
import { roleStanding } from './roleStanding.js';
import { inItself, notRecorded } from './serviceability.js';

/** A required role, filled when any of its candidates can serve. */
export function roleCondition(
  role: RoleFacts,
  accessories: ReadonlyMap<string, AccessoryFacts>,
  rigId: string,
  asked: AskedMoment,
): Condition {
  const about = {
    code: 'ROLE_SERVED',
    itemId: rigId,
    subjectKind: 'ROLE',
    subjectId: role.roleCode,
  } as const;
  const [noCandidate] = roleStanding(role, accessories).blockers;
  if (role.accessoryIds.length === 0 && noCandidate) return unmetLeaf(about, noCandidate);
  const children = role.accessoryIds.map((id) => accessoryCondition(id, accessories, [], asked));
  const levels = children.map(({ level }) => level);
  const best = bestLevel(levels);
  const isServed = hasState(children, 'MET') || best === 'ON_AIR_READY';
  return {
    ...allOf(about, `A ${role.roleName} must be able to serve.`, children),
    joins: 'ANY',
    state: hasState(children, 'MET') ? 'MET' : isServed ? 'NOT_KNOWN' : 'NOT_MET',
    // Out of date is out of date; but what nobody can fill, one would fill with what is dangerous.
    level: isServed || best === 'CHECKS_DUE' ? best : worstLevel(levels),
    wouldBeMetBy: isServed ? null : `Make one ${role.roleName} ready, or record another.`,
  };
}

/** Everything that must hold of an accessory, and of whatever it is housed in. */
function accessoryCondition(
  accessoryId: string,
  accessories: ReadonlyMap<string, AccessoryFacts>,
  housedInside: readonly string[],
  asked: AskedMoment,
): Condition {
  const about = {
    code: 'ACCESSORY_READY',
    itemId: accessoryId,
    subjectKind: 'ITEM',
    subjectId: accessoryId,
  } as const;
  const accessory = accessories.get(accessoryId);
  if (accessory === undefined) return unmetLeaf(about, notRecorded(accessoryId));
  if (housedInside.includes(accessoryId)) return unmetLeaf(about, inItself(accessory));
  const { procedures = [], finalChecks = [], positions = [], housedInId, name } = accessory;
  const children = itemConditions(accessory, positions, accessory.components);
  if (procedures.length > 0) {
    children.push(checkConditions(accessoryId, procedures, finalChecks, asked));
  }
  if (housedInId !== null) {
    const path = [...housedInside, accessoryId];
    children.push(accessoryCondition(housedInId, accessories, path, asked));
  }
  const whose = housedInside.length === 0 ? '' : ', the housing,';
  return allOf(about, `“${name}”${whose} must be able to serve.`, children);
}
