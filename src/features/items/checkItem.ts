import { optionalRecordId } from '../../api/kit/globalId.js';
import type { Checklist } from '../../db/checklist.js';
import { queryInWork } from '../../db/queryInWork.js';
import type { UnitOfWork } from '../../db/unitOfWork.js';
import { edtfRange } from '../provenance/edtfRange.js';
import type { CreateItemInput } from './item.inputs.js';
import type { ItemKind } from './itemKind.js';

/** What is the same for new and changed items: only what is given is in the answer. */
export async function checkItem(
  work: UnitOfWork,
  check: Checklist,
  kind: ItemKind,
  input: Partial<CreateItemInput>,
) {
  const { name, serialNumber, madeEdtf, note } = input;
  const modelId = optionalRecordId('Model', input.modelId, ['modelId']);
  if (typeof modelId === 'string') await refuseOtherKind(work, check, kind, modelId);
  const made = typeof madeEdtf === 'string' ? edtfRange(madeEdtf) : null;
  if (made?.kind === 'refused') check.refuse(made.why, ['madeEdtf']);
  return {
    ...(name !== undefined && { name: shortWords(check, name, 'name') }),
    ...(modelId !== undefined && { modelId }),
    ...(serialNumber !== undefined && {
      serialNumber: shortWords(check, serialNumber, 'serialNumber'),
    }),
    ...(madeEdtf !== undefined && { madeEdtf }),
    ...(note !== undefined && { note: check.text(note, ['note']) }),
  };
}

const shortWords = (check: Checklist, text: string | null, field: string): string | null =>
  text === null || text.trim() === '' ? null : check.words(text, [field]);

async function refuseOtherKind(
  work: UnitOfWork,
  check: Checklist,
  kind: ItemKind,
  modelId: string,
): Promise<void> {
  const [model] = await queryInWork<{ itemKind: ItemKind; name: string }>(
    work,
    `SELECT item_kind AS "itemKind", maker || ' ' || designation AS "name"
     FROM model WHERE id = ?`,
    [modelId],
  );
  const path = ['modelId'];
  if (!model) {
    check.add({ code: 'NOT_FOUND', message: 'There is no model with this id.', path });
  } else if (model.itemKind !== kind) {
    const [wanted, other] = kind === 'RIG' ? ['rig', 'accessory'] : ['accessory', 'rig'];
    check.refuse(
      `${model.name} belongs to the ${other} models; choose a model for the ${wanted}.`,
      path,
    );
  }
}
