import { groupedBy } from '../../db/groupedBy.js';
import { listParameter } from '../../db/dialect.js';
import type { RowSource } from '../../db/rowSource.js';
import type { FindingFacts } from '../../domain/readiness/readinessFacts.js';
import type { FindingSeverity } from './findingSeverity.js';

/** The open findings of many items, for readiness; an item without any has no entry. */
export async function readOpenFindings(
  { rows, dialect }: RowSource,
  itemIds: readonly string[],
): Promise<Map<string, FindingFacts[]>> {
  const found = await rows<FindingRow>(
    `SELECT finding.id AS "id", finding.item_id AS "itemId", finding.severity AS "severity",
       finding.note AS "note"
     FROM finding WHERE ${dialect.isAnyOf('finding.item_id')} AND finding.status = 'OPEN'
     ORDER BY finding.seen_at, finding.id`,
    [listParameter(itemIds)],
  );
  const byItem = groupedBy(found, (row) => row.itemId);
  return new Map([...byItem].map(([itemId, rowsOfItem]) => [itemId, rowsOfItem.map(findingFacts)]));
}

interface FindingRow {
  id: string;
  itemId: string;
  severity: FindingSeverity;
  note: string;
}

const findingFacts = ({ id, note, severity }: FindingRow): FindingFacts => ({
  findingId: id,
  description: note,
  isOpen: true,
  isBlocking: severity === 'BLOCKING',
  // What can hurt is a hazard of its own (`readOpenHazards`) and stands in the way by itself.
  isElectricalHazard: false,
});
