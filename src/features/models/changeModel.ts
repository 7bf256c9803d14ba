import { recordId } from '../../api/kit/globalId.js';
import { isGiven } from '../../api/kit/isGiven.js';
import { changeRow } from '../../db/changeRow.js';
import { Checklist } from '../../db/checklist.js';
import { oneAtATime } from '../../db/oneAtATime.js';
import { Refusal } from '../../db/refusal.js';
import { touchRow } from '../../db/touchRow.js';
import type { UnitOfWork } from '../../db/unitOfWork.js';
import { checkCapabilities } from './checkCapabilities.js';
import { checkRoles } from './checkRoles.js';
import { checkYearsMade } from './checkYearsMade.js';
import { ModelEntity } from './model.entity.js';
import type { ChangeModelInput } from './model.inputs.js';
import { ModelCapabilityEntity } from './modelCapability.entity.js';
import { ModelRoleEntity } from './modelRole.entity.js';
import { refuseTakenModel } from './refuseTakenModel.js';
import { replaceRows } from './replaceRows.js';

export async function changeModel(work: UnitOfWork, input: ChangeModelInput): Promise<string> {
  const id = recordId('Model', input.id);
  await oneAtATime(work, `model ${id}`);
  const before = await work.manager.findOneBy(ModelEntity, { id });
  if (!before) throw Refusal.notFound('model');
  const check = new Checklist(work);
  const { description, note, isRetired } = input;
  const changes = {
    maker: isGiven(input.maker) ? check.words(input.maker, ['maker']) : before.maker,
    designation: isGiven(input.designation)
      ? check.words(input.designation, ['designation'])
      : before.designation,
    firstYearMade: input.firstYearMade === undefined ? before.firstYearMade : input.firstYearMade,
    lastYearMade: input.lastYearMade === undefined ? before.lastYearMade : input.lastYearMade,
    ...(description !== undefined && { description: check.text(description, ['description']) }),
    ...(note !== undefined && { note: check.text(note, ['note']) }),
    ...(isGiven(isRetired) && { retiredAt: isRetired ? work.now : null }),
  };
  checkYearsMade(check, changes);
  await refuseTakenModel(work, check, { ...changes, exceptId: id });
  const capabilities = checkCapabilities(check, input.capabilities ?? []);
  const roles = checkRoles(check, input.roles ?? []);
  check.done();
  const changed = await changeRow(work, ModelEntity, id, input.version, changes);
  const ofModel = <Row extends object>(row: Row) => ({ ...row, modelId: id });
  const hasOther = [
    input.capabilities &&
      (await replaceRows(work, ModelCapabilityEntity, id, capabilities.map(ofModel))),
    input.roles && (await replaceRows(work, ModelRoleEntity, id, roles.map(ofModel))),
  ].includes(true);
  // Bands and roles are part of what a person saw of the model.
  if (hasOther && changed.version === before.version) await touchRow(work, ModelEntity, id, null);
  return id;
}
