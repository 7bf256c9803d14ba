import { Checklist } from '../../db/checklist.js';
import { insertRow } from '../../db/insertRow.js';
import type { UnitOfWork } from '../../db/unitOfWork.js';
import { checkRatings } from './checkRatings.js';
import { checkTubeFit } from './checkTubeFit.js';
import { PartTypeEntity } from './partType.entity.js';
import type { CreatePartTypeInput } from './partType.inputs.js';
import { refuseTakenDesignation } from './refuseTakenDesignation.js';

export async function createPartType(
  work: UnitOfWork,
  input: CreatePartTypeInput,
): Promise<string> {
  const check = new Checklist(work);
  const { kind } = input;
  const designation = check.words(input.designation, ['designation']);
  const description = check.text(input.description, ['description']);
  const ratings = checkRatings(check, input.ratings);
  const tube = checkTubeFit(check, kind, input.tube);
  await refuseTakenDesignation(work, check, { kind, designation });
  check.done();
  const partType = await insertRow(work, PartTypeEntity, {
    kind,
    designation,
    description,
    ratings,
    ...tube,
    retiredAt: null,
  });
  return partType.id;
}
