import { recordId } from '../../api/kit/globalId.js';
import { Checklist } from '../../db/checklist.js';
import { insertRow } from '../../db/insertRow.js';
import type { UnitOfWork } from '../../db/unitOfWork.js';
import { checkSerialDate } from './checkSerialDate.js';
import { DatedSerialEntity } from './datedSerial.entity.js';
import type { RecordDatedSerialInput } from './datedSerial.type.js';

export async function recordDatedSerial(
  work: UnitOfWork,
  input: RecordDatedSerialInput,
): Promise<string> {
  const modelId = recordId('Model', input.modelId, ['modelId']);
  const check = new Checklist(work);
  await check.exists('model', modelId, ['modelId']);
  const serialNumber = check.words(input.serialNumber, ['serialNumber']);
  const date = checkSerialDate(check, input.dateEdtf, work.now);
  const source = check.words(input.source, ['source'], 1000);
  check.done();
  const values = { modelId, serialNumber, ...date, source, withdrawnAt: null };
  return (await insertRow(work, DatedSerialEntity, values)).id;
}
