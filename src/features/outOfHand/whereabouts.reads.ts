import { one } from '../../api/kit/relations.js';
import type { Relation, Row, TypeReads } from '../../api/kit/typeReads.js';
import { listParameter } from '../../db/dialect.js';
import type { RowSource } from '../../db/rowSource.js';
import { dayNumber } from '../../domain/dates/dayNumber.js';
import type { LossKind } from './lossKind.js';

interface Absence {
  itemId: string;
  kind: 'LENT' | 'LENT_TO_US' | 'DISPOSED_OF' | LossKind;
  since: string;
  dueOn: string | null;
  partyId: string | null;
  placeName: string | null;
}

const atHand = { since: null, dueOn: null, overdueDays: 0, partyId: null, placeName: null };

/** Where each item is: for good, then missing, then lent; the first that holds. Three statements. */
export async function readWhereabouts(
  { rows, dialect }: RowSource,
  itemIds: readonly string[],
  today: string,
): Promise<Map<string, Row>> {
  const ids = [listParameter(itemIds)];
  const loans = await rows<Absence>(
    `SELECT item_id AS "itemId",
       CASE direction WHEN 'IN' THEN 'LENT_TO_US' ELSE 'LENT' END AS "kind", lent_on AS "since", due_on AS "dueOn",
       borrower_id AS "partyId", place_name AS "placeName"
     FROM loan WHERE returned_on IS NULL AND ${dialect.isAnyOf('item_id')}`,
    ids,
  );
  const losses = await rows<Absence>(
    `SELECT item_id AS "itemId", kind AS "kind", missed_on AS "since", NULL AS "dueOn",
       NULL AS "partyId", NULL AS "placeName"
     FROM item_loss WHERE found_on IS NULL AND ${dialect.isAnyOf('item_id')}`,
    ids,
  );
  const gone = await rows<Absence>(
    `SELECT disposal_line.item_id AS "itemId", 'DISPOSED_OF' AS "kind",
       disposal.disposed_on AS "since", NULL AS "dueOn", disposal.to_party_id AS "partyId",
       disposal.venue AS "placeName"
     FROM disposal_line JOIN disposal ON disposal.id = disposal_line.disposal_id
     JOIN item ON item.id = disposal_line.item_id
     WHERE item.retired_at IS NOT NULL AND ${dialect.isAnyOf('disposal_line.item_id')}
     ORDER BY disposal.disposed_on, disposal.id`,
    ids,
  );
  const found = new Map<string, Row>(
    itemIds.map((id) => [id, { id, state: 'AT_HAND', ...atHand }]),
  );
  for (const { itemId, kind, ...absence } of [...loans, ...losses, ...gone]) {
    const overdueDays =
      absence.dueOn === null ? 0 : Math.max(0, dayNumber(today) - dayNumber(absence.dueOn));
    found.set(itemId, { id: itemId, state: kind, ...absence, overdueDays });
  }
  return found;
}

const whereabouts: Relation = async ({ database: { reader }, nowMs }, items) => {
  const today = new Date(nowMs).toISOString().slice(0, 10);
  const ids = items.map(({ id }) => id);
  const found = await readWhereabouts(reader, ids, today);
  const values = ids.map((id) => found.get(id) ?? null);
  const children = values.filter((row) => row !== null);
  return { values, children, childType: 'ItemWhereabouts' };
};

export const whereaboutsReads: TypeReads = {
  typeName: 'ItemWhereabouts',
  byIds: () => Promise.resolve([]),
  relations: { with: one('Party', 'partyId') },
};

export const whereaboutsRelationsOfItem: Record<string, Relation> = { whereabouts };
