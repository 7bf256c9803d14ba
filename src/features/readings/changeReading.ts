import { optionalRecordId, recordId } from '../../api/kit/globalId.js';
import { isGiven } from '../../api/kit/isGiven.js';
import { changeRow } from '../../db/changeRow.js';
import { Checklist } from '../../db/checklist.js';
import { Refusal } from '../../db/refusal.js';
import { rowSourceInWork } from '../../db/rowSource.js';
import type { UnitOfWork } from '../../db/unitOfWork.js';
import { checkReading } from './checkReading.js';
import { readLimitsOfSubjects } from './limitsOfSubjects.reads.js';
import { ReadingEntity } from './reading.entity.js';
import type { ChangeReadingInput } from './reading.inputs.js';
import { refuseReadingOfStep } from './refuseReadingOfStep.js';

/** Corrects a reading that was written down wrongly; the history keeps what it said before. */
export async function changeReading(work: UnitOfWork, input: ChangeReadingInput): Promise<string> {
  const id = recordId('Reading', input.id);
  const before = await work.manager.findOneBy(ReadingEntity, { id });
  if (!before) throw Refusal.notFound('reading');
  const { quantity, value, unit, tier, takenAt, instrument, method, note } = input;
  if (isGiven(quantity) || isGiven(value) || isGiven(unit)) await refuseReadingOfStep(work, id);
  const { componentId, itemId } = before;
  const check = new Checklist(work);
  const takenById = optionalRecordId('Party', input.takenById, ['takenById']);
  await check.exists('party', takenById ?? null, ['takenById']);
  const limits = await readLimitsOfSubjects(
    rowSourceInWork(work),
    componentId === null ? [] : [componentId],
    itemId === null ? [] : [itemId],
  );
  const corrected = checkReading(
    work,
    check,
    {
      quantity: quantity ?? before.quantity,
      value: value ?? before.value,
      unit: unit ?? before.unit,
      tier: tier ?? before.tier,
      takenAt: takenAt ?? new Date(before.takenAt),
      instrument: instrument === undefined ? before.instrument : instrument,
      method: method === undefined ? before.method : method,
      note: note === undefined ? before.note : note,
    },
    limits.get(componentId ?? itemId ?? '') ?? [],
    [],
  );
  check.done();
  await changeRow(work, ReadingEntity, id, input.version, {
    ...corrected,
    takenById: takenById === undefined ? before.takenById : takenById,
  });
  return id;
}
