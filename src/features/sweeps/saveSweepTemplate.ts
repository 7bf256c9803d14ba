import { recordId } from '../../api/kit/globalId.js';
import { Checklist } from '../../db/checklist.js';
import { insertRow } from '../../db/insertRow.js';
import { shortText } from '../../db/shortText.js';
import type { UnitOfWork } from '../../db/unitOfWork.js';
import { nameKey } from '../../domain/nameKey.js';
import { checkColumns } from './checkColumns.js';
import { checkDesignators } from './checkDesignators.js';
import { refuseTakenName } from './refuseTakenName.js';
import { SweepTemplateEntity } from './sweepTemplate.entity.js';
import type { SaveSweepTemplateInput } from './sweepTemplate.inputs.js';

export async function saveSweepTemplate(
  work: UnitOfWork,
  input: SaveSweepTemplateInput,
): Promise<string> {
  const modelId = recordId('Model', input.modelId, ['modelId']);
  const check = new Checklist(work);
  await check.exists('model', modelId, ['modelId']);
  check.done();
  const name = check.words(input.name, ['name']);
  await refuseTakenName(work, check, { modelId, name });
  const values = {
    modelId,
    name,
    nameKey: nameKey(name),
    designators: await checkDesignators(work, check, modelId, input.designators),
    quantities: checkColumns(check, input.quantities),
    tier: input.tier,
    instrument: shortText(check, input.instrument, ['instrument'], 200),
    method: shortText(check, input.method, ['method'], 200),
    note: check.text(input.note, ['note']),
    retiredAt: null,
  };
  check.done();
  return (await insertRow(work, SweepTemplateEntity, values)).id;
}
