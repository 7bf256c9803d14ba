import type { Checklist } from '../../db/checklist.js';
import type { AccessoryRole } from '../items/accessoryRole.js';
import type { ModelRoleInput } from './modelDetail.inputs.js';

/** Each role once. */
export function checkRoles(
  check: Checklist,
  roles: readonly ModelRoleInput[],
): { role: AccessoryRole; isRequired: boolean }[] {
  const seen = new Set<string>();
  return roles.map(({ role, isRequired }, index) => {
    check.that(!seen.has(role), `${role} is there twice.`, ['roles', String(index)]);
    seen.add(role);
    return { role, isRequired };
  });
}
