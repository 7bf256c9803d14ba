import { recordId } from '../../api/kit/globalId.js';
import { changeRow } from '../../db/changeRow.js';
import { Refusal } from '../../db/refusal.js';
import type { UnitOfWork } from '../../db/unitOfWork.js';
import { ServiceEntity } from '../items/service.entity.js';
import type { ReleaseAccessoryInput } from './service.inputs.js';

export async function releaseAccessory(
  work: UnitOfWork,
  input: ReleaseAccessoryInput,
): Promise<string> {
  const id = recordId('Service', input.serviceId, ['serviceId']);
  const service = await work.manager.findOneBy(ServiceEntity, { id });
  if (!service) throw Refusal.notFound('service', ['serviceId']);
  if (service.endedAt !== null) {
    throw Refusal.conflict(`It ended at ${service.endedAt} already.`, ['serviceId']);
  }
  await changeRow(work, ServiceEntity, id, input.version, { endedAt: work.now });
  return id;
}
