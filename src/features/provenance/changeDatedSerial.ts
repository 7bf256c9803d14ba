import { recordId } from '../../api/kit/globalId.js';
import { isGiven } from '../../api/kit/isGiven.js';
import { changeRow } from '../../db/changeRow.js';
import { Checklist } from '../../db/checklist.js';
import type { UnitOfWork } from '../../db/unitOfWork.js';
import { checkSerialDate } from './checkSerialDate.js';
import { DatedSerialEntity } from './datedSerial.entity.js';
import type { ChangeDatedSerialInput } from './datedSerial.type.js';

export async function changeDatedSerial(
  work: UnitOfWork,
  input: ChangeDatedSerialInput,
): Promise<string> {
  const id = recordId('DatedSerial', input.id);
  const check = new Checklist(work);
  const { serialNumber, dateEdtf, source, isWithdrawn } = input;
  const changes = {
    ...(isGiven(serialNumber) && { serialNumber: check.words(serialNumber, ['serialNumber']) }),
    ...(isGiven(dateEdtf) && checkSerialDate(check, dateEdtf, work.now)),
    ...(isGiven(source) && { source: check.words(source, ['source'], 1000) }),
    ...(isGiven(isWithdrawn) && { withdrawnAt: isWithdrawn ? work.now : null }),
  };
  check.done();
  await changeRow(work, DatedSerialEntity, id, input.version, changes);
  return id;
}
