import { oneAtATime } from '../../db/oneAtATime.js';
import { queryInWork } from '../../db/queryInWork.js';
import type { UnitOfWork, Write } from '../../db/unitOfWork.js';
import { ChangeEventEntity, type TouchedRecord } from './changeEvent.entity.js';

/** Above this a window is better off loading everything anew. Our own choice, no source. */
const mostNamed = 200;
/** How many events are kept for windows that were away. Our own choice, no source. */
const mostKept = 10_000;

/**
 * Numbers what this unit of work changed. The number is taken under a lock that is held until the
 * commit: whoever sees an event has every event before it in sight too.
 */
export async function appendChangeEvent(
  work: UnitOfWork,
  itemIds: readonly string[],
): Promise<void> {
  if (work.writes.length === 0) return;
  await oneAtATime(work, 'change events');
  const [row] = await queryInWork<{ last: number | string | null }>(
    work,
    'SELECT MAX(sequence) AS "last" FROM change_event',
  );
  const sequence = Number(row?.last ?? 0) + 1;
  const records = touchedRecords(work.writes);
  const isNamed = records.length <= mostNamed && itemIds.length <= mostNamed;
  const event: ChangeEventEntity = {
    sequence,
    at: work.now,
    action: work.action,
    actorId: work.actorId,
    records: isNamed ? records : null,
    itemIds: isNamed ? [...itemIds] : null,
  };
  await work.manager
    .createQueryBuilder()
    .insert()
    .into(ChangeEventEntity)
    .values(event)
    .updateEntity(false)
    .execute();
  await queryInWork(work, 'DELETE FROM change_event WHERE sequence <= ?', [sequence - mostKept]);
}

/** Each record once: what it was before the unit of work against what it is after. */
function touchedRecords(writes: readonly Write[]): TouchedRecord[] {
  const records = new Map<string, TouchedRecord>();
  for (const { table, recordId, before, after } of writes) {
    const key = `${table} ${recordId}`;
    const wasAdded = before === null || records.get(key)?.change === 'ADDED';
    if (wasAdded && after === null) {
      records.delete(key);
      continue;
    }
    const kind: unknown = table === 'item' ? (after ?? before)?.['kind'] : undefined;
    records.set(key, {
      table,
      id: recordId,
      change: after === null ? 'REMOVED' : wasAdded ? 'ADDED' : 'CHANGED',
      ...(typeof kind === 'string' && { itemKind: kind }),
    });
  }
  return [...records.values()];
}
