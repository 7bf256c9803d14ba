import { one } from '../../api/kit/relations.js';
import type { Relation, Row, TypeReads } from '../../api/kit/typeReads.js';
import { listParameter } from '../../db/dialect.js';
import { groupedBy } from '../../db/groupedBy.js';

interface CustodyRow extends Row {
  itemId: string;
  startEarliestOn: string | null;
}

const compareText = (left: string, right: string): number =>
  left < right ? -1 : Number(left > right);

const firstDay = ({ startEarliestOn }: CustodyRow): string => startEarliestOn ?? '9999';

/** Where it was without changing hands: what the past says, and loans. Two statements. */
export const custody: Relation = async ({ database: { reader } }, chains) => {
  const ids = [listParameter(chains.map(({ id }) => id))];
  const events = await reader.rows<CustodyRow>(
    `SELECT id AS "id", item_id AS "itemId", kind AS "kind", earliest_on AS "startEarliestOn",
       latest_on AS "endLatestOn", place_name AS "placeName",
       to_party_id AS "partyId"
     FROM provenance_event WHERE kind IN ('LENT', 'STORED', 'SHOWN')
       AND standing <> 'CONTRADICTED' AND ${reader.dialect.isAnyOf('item_id')} ORDER BY id`,
    ids,
  );
  const loans = await reader.rows<CustodyRow>(
    `SELECT id AS "id", item_id AS "itemId",
       CASE direction WHEN 'IN' THEN 'LENT_TO_US' ELSE 'LENT' END AS "kind",
       lent_on AS "startEarliestOn", returned_on AS "endLatestOn", place_name AS "placeName",
       borrower_id AS "partyId"
     FROM loan WHERE ${reader.dialect.isAnyOf('item_id')} ORDER BY id`,
    ids,
  );
  const rows = [
    ...events.map((row) => ({ ...row, isOnRecordAsLoan: false })),
    ...loans.map((row) => ({ ...row, isOnRecordAsLoan: true })),
  ].sort((left, right) => compareText(firstDay(left), firstDay(right)));
  const byItem = groupedBy(rows, ({ itemId }) => itemId);
  const values = chains.map(({ id }) => byItem.get(id) ?? []);
  return { values, children: rows, childType: 'Custody' };
};

export const custodyReads: TypeReads = {
  typeName: 'Custody',
  byIds: () => Promise.resolve([]),
  relations: { keeper: one('Party', 'partyId') },
};
