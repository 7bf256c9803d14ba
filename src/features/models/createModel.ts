import { Checklist } from '../../db/checklist.js';
import { insertRow, insertRows } from '../../db/insertRow.js';
import type { UnitOfWork } from '../../db/unitOfWork.js';
import { addPositions } from './addPositions.js';
import { checkCapabilities } from './checkCapabilities.js';
import { checkPositions } from './checkPositions.js';
import { checkRoles } from './checkRoles.js';
import { checkYearsMade } from './checkYearsMade.js';
import { ModelEntity } from './model.entity.js';
import type { CreateModelInput } from './model.inputs.js';
import { ModelCapabilityEntity } from './modelCapability.entity.js';
import { ModelRoleEntity } from './modelRole.entity.js';
import { refuseTakenModel } from './refuseTakenModel.js';

export async function createModel(work: UnitOfWork, input: CreateModelInput): Promise<string> {
  const check = new Checklist(work);
  const { itemKind, firstYearMade = null, lastYearMade = null } = input;
  const maker = check.words(input.maker, ['maker']);
  const designation = check.words(input.designation, ['designation']);
  const description = check.text(input.description, ['description']);
  const note = check.text(input.note, ['note']);
  checkYearsMade(check, { firstYearMade, lastYearMade });
  await refuseTakenModel(work, check, { maker, designation });
  const capabilities = checkCapabilities(check, input.capabilities);
  const roles = checkRoles(check, input.roles);
  const positions = await checkPositions(work, check, input.fitOut, 'fitOut');
  check.done();
  const { id: modelId } = await insertRow(work, ModelEntity, {
    itemKind,
    maker,
    designation,
    description,
    firstYearMade,
    lastYearMade,
    note,
    retiredAt: null,
  });
  const ofModel = <Row extends object>(row: Row) => ({ ...row, modelId });
  await insertRows(work, ModelCapabilityEntity, capabilities.map(ofModel));
  await insertRows(work, ModelRoleEntity, roles.map(ofModel));
  await addPositions(work, modelId, positions, 1);
  return modelId;
}
