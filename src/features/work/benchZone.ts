import type { UnitOfWork } from '../../db/unitOfWork.js';
import { CollectionEntity } from '../collection/collection.entity.js';

/** The zone given, else the collection's, else UTC. */
export async function benchZone(
  work: UnitOfWork,
  zone: string | null | undefined,
): Promise<string> {
  if (typeof zone === 'string') return zone;
  const [collection] = await work.manager.find(CollectionEntity, { take: 1 });
  return collection?.zone ?? 'UTC';
}
