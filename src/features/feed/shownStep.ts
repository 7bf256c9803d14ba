import type { ApiContext } from '../../api/kit/apiContext.js';
import { globalId } from '../../api/kit/globalId.js';
import { listParameter } from '../../db/dialect.js';
import type { ChangedRecord, RecordsChanged } from './feed.type.js';
import type { TouchedRecord } from './changeEvent.entity.js';
import { feedCursor } from './feedCursor.js';
import type { FeedStep } from './followChanges.js';

/** A step of the feed with the ids and type names of the schema in place of tables. */
export async function shownStep(
  context: ApiContext,
  { position, event }: FeedStep,
): Promise<RecordsChanged> {
  const records = event?.records ?? null;
  return {
    cursor: feedCursor(position),
    isEverything: records === null,
    action: event?.action ?? null,
    at: event?.at ?? null,
    records: (records ?? []).flatMap((record) => shownRecord(context, record)),
    itemIds: await itemIdsOf(context, event?.itemIds ?? []),
  };
}

/** Rows of tables without a type of their own (links) are told by the record they belong to. */
function shownRecord(context: ApiContext, record: TouchedRecord): ChangedRecord[] {
  const typeName = typeOfTable(context, record);
  if (typeName === null) return [];
  return [{ id: globalId(typeName, record.id), typeName, change: record.change }];
}

const itemTypeOf = (kind: string): string => (kind === 'RIG' ? 'Rig' : 'Accessory');

function typeOfTable({ reads }: ApiContext, { table, itemKind }: TouchedRecord): string | null {
  if (itemKind !== undefined) return itemTypeOf(itemKind);
  for (const type of reads.values()) {
    if ('table' in type && type.table === table) return type.typeName;
  }
  return null;
}

async function itemIdsOf({ database: { reader } }: ApiContext, ids: readonly string[]) {
  if (ids.length === 0) return [];
  const items = await reader.rows<{ id: string; kind: string }>(
    `SELECT id AS "id", kind AS "kind" FROM item WHERE ${reader.dialect.isAnyOf('id')} ORDER BY id`,
    [listParameter(ids)],
  );
  return items.map(({ id, kind }) => globalId(itemTypeOf(kind), id));
}
