import { recordId } from '../../api/kit/globalId.js';
import { isGiven } from '../../api/kit/isGiven.js';
import { changeRow } from '../../db/changeRow.js';
import { Checklist } from '../../db/checklist.js';
import { Refusal } from '../../db/refusal.js';
import { shortText } from '../../db/shortText.js';
import type { UnitOfWork } from '../../db/unitOfWork.js';
import { nameKey } from '../../domain/nameKey.js';
import { checkColumns } from './checkColumns.js';
import { checkDesignators } from './checkDesignators.js';
import { refuseTakenName } from './refuseTakenName.js';
import { SweepTemplateEntity } from './sweepTemplate.entity.js';
import type { ChangeSweepTemplateInput } from './sweepTemplate.inputs.js';

export async function changeSweepTemplate(
  work: UnitOfWork,
  input: ChangeSweepTemplateInput,
): Promise<string> {
  const id = recordId('SweepTemplate', input.id);
  const before = await work.manager.findOneBy(SweepTemplateEntity, { id });
  if (!before) throw Refusal.notFound('sweep template', ['id']);
  const { modelId } = before;
  const { designators, quantities, tier, instrument, method, note, isRetired } = input;
  const check = new Checklist(work);
  const name = isGiven(input.name) ? check.words(input.name, ['name']) : null;
  if (name !== null) await refuseTakenName(work, check, { modelId, name, exceptId: id });
  const changes = {
    ...(name !== null && { name, nameKey: nameKey(name) }),
    ...(isGiven(designators) && {
      designators: await checkDesignators(work, check, modelId, designators),
    }),
    ...(isGiven(quantities) && { quantities: checkColumns(check, quantities) }),
    ...(isGiven(tier) && { tier }),
    ...(instrument !== undefined && {
      instrument: shortText(check, instrument, ['instrument'], 200),
    }),
    ...(method !== undefined && { method: shortText(check, method, ['method'], 200) }),
    ...(note !== undefined && { note: check.text(note, ['note']) }),
    ...(isGiven(isRetired) && { retiredAt: isRetired ? work.now : null }),
  };
  check.done();
  await changeRow(work, SweepTemplateEntity, id, input.version, changes);
  return id;
}
