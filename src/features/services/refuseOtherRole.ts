import type { Checklist } from '../../db/checklist.js';
import type { UnitOfWork } from '../../db/unitOfWork.js';
import type { AccessoryRole } from '../items/accessoryRole.js';
import { ItemEntity } from '../items/item.entity.js';

/** In words: POWER_SUPPLY is "power supply". */
const inWords = (role: AccessoryRole): string => role.toLowerCase().replaceAll('_', ' ');

/** An accessory does what it is for; what sits in its housing is assigned by itself. */
export async function refuseOtherRole(
  work: UnitOfWork,
  check: Checklist,
  accessory: ItemEntity,
  role: AccessoryRole,
): Promise<void> {
  const path = ['role'];
  if (role === 'TEST_GEAR') check.refuse('Test gear serves no rig on the air.', path);
  else if (accessory.role !== role) {
    const housed = await work.manager.findBy(ItemEntity, { housedInId: accessory.id, role });
    const numbers = housed.map(({ inventoryNumber }) => inventoryNumber).sort();
    const mend = numbers.length > 0 ? `Assign ${numbers.join(' or ')}, housed in it.` : '';
    const own = accessory.role === null ? 'without a role' : `a ${inWords(accessory.role)}`;
    const number = accessory.inventoryNumber;
    check.refuse(
      `${number} is ${own}, not a ${inWords(role)}. ${mend || 'Choose another accessory, or correct what it is for.'}`,
      path,
    );
  }
}
