import { checkConditions } from './checkConditions.js';
import { allOf, type Condition } from './condition.js';
import { itemConditions } from './itemConditions.js';
import type { ReadinessFacts } from './readinessFacts.js';
import { roleCondition } from './roleCondition.js';

/**
 * Readiness as a derivation: every condition that was judged, met or not, with what it rests on.
 * Its level is that of `readiness(facts, nowMs)`.
 * @param zone IANA zone of the days that the statements name.
 */
export function readinessTree(facts: ReadinessFacts, nowMs: number, zone = 'UTC'): Condition {
  const asked = { nowMs, zone };
  const { rig, positions, requiredRoles, procedures, finalChecks } = facts;
  const about = { itemId: rig.itemId, subjectKind: 'ITEM', subjectId: rig.itemId } as const;
  const isAccessory = facts.mayLackFinalChecks === true;
  const accessories = new Map(facts.accessories.map((one) => [one.itemId, one]));
  const required = rig.components.filter(({ isInRequiredPosition }) => isInRequiredPosition);
  const children = itemConditions(rig, positions, required);
  if (requiredRoles.length > 0) {
    children.push(
      allOf(
        { ...about, code: 'ROLES_SERVED' },
        'Every accessory that it needs must be able to serve.',
        requiredRoles.map((role) => roleCondition(role, accessories, rig.itemId, asked)),
      ),
    );
  }
  if (!isAccessory || procedures.length > 0) {
    children.push(checkConditions(rig.itemId, procedures, finalChecks, asked));
  }
  return isAccessory
    ? allOf({ ...about, code: 'ACCESSORY_READY' }, `“${rig.name}” may serve.`, children)
    : allOf({ ...about, code: 'ON_AIR' }, `“${rig.name}” may go on the air.`, children);
}
