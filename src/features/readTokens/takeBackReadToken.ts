import { recordId } from '../../api/kit/globalId.js';
import { changeRow } from '../../db/changeRow.js';
import { Refusal } from '../../db/refusal.js';
import type { UnitOfWork } from '../../db/unitOfWork.js';
import { ReadTokenEntity } from './readToken.entity.js';
import type { TakeBackReadTokenInput } from './readToken.inputs.js';

/** From the next request on it opens nothing; this cannot be undone. */
export async function takeBackReadToken(
  work: UnitOfWork,
  { tokenId, version }: TakeBackReadTokenInput,
): Promise<string> {
  const id = recordId('ReadToken', tokenId, ['tokenId']);
  const token = await work.manager.findOneBy(ReadTokenEntity, { id });
  if (token !== null && token.takenBackAt !== null) {
    throw Refusal.invalid('This token was taken back already.', ['tokenId']);
  }
  await changeRow(work, ReadTokenEntity, id, version, { takenBackAt: work.now });
  return id;
}
