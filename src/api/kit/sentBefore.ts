import type { EntityTarget, FindOptionsWhere } from 'typeorm';
import { contentDigest } from './contentDigest.js';
import { Checklist } from '../../db/checklist.js';
import { oneAtATime } from '../../db/oneAtATime.js';
import { Refusal } from '../../db/refusal.js';
import type { KeptRow } from '../../db/keptRow.js';
import type { UnitOfWork } from '../../db/unitOfWork.js';

type Keyed = KeptRow & { key: string; digest: string };

/**
 * Whether this was sent under its key before; twice at once, the second waits for the first.
 * @returns the record that it made then, or null, and what to keep with the new one
 * @throws Refusal when the key was used for another content
 */
export async function sentBefore<Entity extends Keyed>(
  work: UnitOfWork,
  entity: EntityTarget<Entity>,
  input: { key: string },
): Promise<{ known: Entity | null; key: string; digest: string }> {
  const check = new Checklist(work);
  const key = check.words(input.key, ['key'], 100);
  check.done();
  const { tableName } = work.manager.connection.getMetadata(entity);
  await oneAtATime(work, `${tableName} ${key}`);
  const digest = contentDigest({ ...input, key: null });
  const known = await work.manager.findOneBy(entity, { key } as FindOptionsWhere<Entity>);
  if (known && known.digest !== digest) {
    throw Refusal.conflict(
      `Something else was sent under the key “${key}” at ${known.recordedAt}. Send this under a key of its own.`,
      ['key'],
    );
  }
  return { known, key, digest };
}
