import { optionalRecordId } from '../../api/kit/globalId.js';
import { isGiven } from '../../api/kit/isGiven.js';
import { changeRow } from '../../db/changeRow.js';
import { Checklist } from '../../db/checklist.js';
import { insertRow } from '../../db/insertRow.js';
import { oneAtATime } from '../../db/oneAtATime.js';
import { Refusal } from '../../db/refusal.js';
import type { UnitOfWork } from '../../db/unitOfWork.js';
import { currencyExponent } from '../money/currencyExponent.js';
import type { ItuRegion } from '../reference/ituRegion.js';
import { CollectionEntity } from './collection.entity.js';
import type { DescribeCollectionInput } from './collection.inputs.js';
import { undescribedCollection } from './undescribedCollection.js';

const regionNumber = (region: ItuRegion | null): 1 | 2 | 3 | null =>
  region === null ? null : (Number(region.slice(-1)) as 1 | 2 | 3);

/** There is one row, written the first time that anything is said. */
export async function describeCollection(
  work: UnitOfWork,
  input: DescribeCollectionInput,
): Promise<string> {
  const check = new Checklist(work);
  const { name, homeCurrency, zone, ituRegion, licenceClass } = input;
  const ownerId = optionalRecordId('Party', input.ownerId, ['ownerId']);
  await check.exists('party', ownerId ?? null, ['ownerId']);
  if (isGiven(homeCurrency) && currencyExponent(homeCurrency) === null) {
    check.refuse(`"${homeCurrency}" is not a currency of ISO 4217.`, ['homeCurrency']);
  }
  const said = {
    ...(isGiven(name) && { name: check.words(name, ['name']) }),
    ...(ownerId !== undefined && { ownerId }),
    ...(isGiven(homeCurrency) && { homeCurrency }),
    ...(isGiven(zone) && { zone }),
    ...(ituRegion !== undefined && { ituRegion: regionNumber(ituRegion) }),
    ...(licenceClass !== undefined && { licenceClass: check.text(licenceClass, ['licenceClass']) }),
  };
  check.done();
  await oneAtATime(work, 'the collection');
  const [known] = await work.manager.find(CollectionEntity, { take: 1 });
  if (known) return (await changeRow(work, CollectionEntity, known.id, input.version, said)).id;
  if (input.version !== 0) throw Refusal.stale(0, input.version);
  const row = { ...undescribedCollection('UTC'), ...said };
  return (await insertRow(work, CollectionEntity, row)).id;
}
