import { recordId } from '../../api/kit/globalId.js';
import { Checklist } from '../../db/checklist.js';
import { insertRow } from '../../db/insertRow.js';
import { oneAtATime } from '../../db/oneAtATime.js';
import type { UnitOfWork } from '../../db/unitOfWork.js';
import { presentItem } from '../items/presentItem.js';
import { ServiceEntity } from '../items/service.entity.js';
import { refuseOtherRole } from './refuseOtherRole.js';
import type { AssignAccessoryInput } from './service.inputs.js';
import { servicesOf } from './servicesOf.js';

/** One accessory may serve several rigs, unless it serves one of them exclusively. */
export async function assignAccessory(
  work: UnitOfWork,
  input: AssignAccessoryInput,
): Promise<string> {
  const accessoryId = recordId('Accessory', input.accessoryId, ['accessoryId']);
  const rigId = recordId('Rig', input.rigId, ['rigId']);
  await oneAtATime(work, `service of ${accessoryId}`);
  const accessory = await presentItem(work, accessoryId, ['accessoryId']);
  const rig = await presentItem(work, rigId, ['rigId']);
  const check = new Checklist(work);
  const { role, isExclusive } = input;
  const note = check.text(input.note, ['note']);
  await refuseOtherRole(work, check, accessory, role);
  const conflict = (message: string, field: string) => {
    check.add({ code: 'CONFLICT', message, path: [field] });
  };
  const running = await servicesOf(work, accessoryId);
  if (running.some((service) => service.rigId === rigId && service.role === role)) {
    conflict(`It serves ${rig.inventoryNumber} in this role already.`, 'rigId');
  }
  const others = running.filter((service) => service.rigId !== rigId);
  const owner = others.find((service) => service.isExclusive);
  if (owner) {
    conflict(`It serves ${owner.rigNumber} exclusively. Release it there first.`, 'accessoryId');
  } else if (isExclusive && others.length > 0) {
    const rigs = others.map(({ rigNumber }) => rigNumber).join(', ');
    conflict(
      `It serves ${rigs} too, so not this rig exclusively. Release it there.`,
      'isExclusive',
    );
  }
  check.done();
  const service = await insertRow(work, ServiceEntity, {
    accessoryId,
    rigId,
    role,
    isExclusive,
    note,
    startedAt: work.now,
    endedAt: null,
  });
  return service.id;
}
