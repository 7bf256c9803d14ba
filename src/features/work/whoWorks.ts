import { checkedRecordId } from '../../api/kit/checkedRecordId.js';
import type { Checklist } from '../../db/checklist.js';
import type { UnitOfWork } from '../../db/unitOfWork.js';
import { CollectionEntity } from '../collection/collection.entity.js';
import { PartyEntity } from '../parties/party.entity.js';

/**
 * The person at the bench: the one named, else the owner of the collection.
 * @returns null when there is a problem, which then is in the checklist.
 */
export async function whoWorks(
  work: UnitOfWork,
  check: Checklist,
  personId: string | null | undefined,
  path = ['personId'],
): Promise<PartyEntity | null> {
  const id =
    typeof personId === 'string'
      ? checkedRecordId(check, 'Party', personId, path)
      : ((await work.manager.find(CollectionEntity, { take: 1 }))[0]?.ownerId ?? null);
  if (typeof personId !== 'string' && id === null) {
    check.refuse('Say who works: the collection names no owner yet.', path);
  }
  if (id === null) return null;
  const person = await work.manager.findOneBy(PartyEntity, { id });
  if (!person) check.add({ code: 'NOT_FOUND', message: 'There is no person with this id.', path });
  else if (person.kind !== 'PERSON') {
    check.refuse(`“${person.name}” is an organisation. Name the person who worked.`, path);
  }
  return person;
}
