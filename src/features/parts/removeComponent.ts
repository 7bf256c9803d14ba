import { recordId } from '../../api/kit/globalId.js';
import { pastInstant } from '../../api/kit/pastInstant.js';
import { Checklist } from '../../db/checklist.js';
import { oneAtATime } from '../../db/oneAtATime.js';
import { Refusal } from '../../db/refusal.js';
import type { UnitOfWork } from '../../db/unitOfWork.js';
import { endFitting } from './endFitting.js';
import { FittingEntity } from './fitting.entity.js';
import type { RemoveComponentInput } from './fitting.inputs.js';
import { fittingsGuard } from './fittingsGuard.js';
import { refuseFittings } from './refuseFittings.js';

export async function removeComponent(
  work: UnitOfWork,
  input: RemoveComponentInput,
): Promise<string> {
  await oneAtATime(work, fittingsGuard);
  const componentId = recordId('Component', input.componentId, ['componentId']);
  const check = new Checklist(work);
  await check.exists('component', componentId, ['componentId']);
  const removedAt = pastInstant(check, work, input.removedAt, ['removedAt']);
  const note = check.text(input.note, ['note']);
  check.done();
  const fittings = await work.manager.find(FittingEntity, {
    where: { componentId },
    order: { fittedAt: 'DESC' },
  });
  const fitting = fittings.find((one) => one.removedAt === null);
  if (!fitting) {
    const [last] = fittings;
    const left = last
      ? `: it came out of ${last.designator} at ${last.removedAt ?? 'an unknown time'}`
      : '';
    throw Refusal.conflict(`This component sits nowhere${left}.`, ['componentId']);
  }
  const path = ['removedAt'];
  const places = { place: path, component: path, time: path };
  await refuseFittings(work, check, [{ ...fitting, removedAt }], places);
  check.done();
  await endFitting(work, fitting, { removedAt, disposition: input.disposition, note });
  return fitting.id;
}
