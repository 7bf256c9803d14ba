import { groupedBy } from '../../db/groupedBy.js';
import { listParameter } from '../../db/dialect.js';
import type { RowSource } from '../../db/rowSource.js';
import type { FindingFacts } from '../../domain/readiness/readinessFacts.js';
import type { FindingSeverity } from './findingSeverity.js';

/**
 * The findings of many items, for readiness; an item without any has no entry.
 * @param at an instant: every finding seen by then, as it stood; left out: those open now.
 */
export async function readFindings(
  { rows, dialect }: RowSource,
  itemIds: readonly string[],
  at?: string,
): Promise<Map<string, FindingFacts[]>> {
  const found = await rows<FindingRow>(
    `SELECT finding.id AS "id", finding.item_id AS "itemId", finding.severity AS "severity",
       finding.note AS "note", finding.seen_at AS "seenAt", finding.settled_at AS "settledAt"
     FROM finding WHERE ${dialect.isAnyOf('finding.item_id')}
       AND ${at === undefined ? `finding.status = 'OPEN'` : 'finding.seen_at <= ?'}
     ORDER BY finding.seen_at, finding.id`,
    [listParameter(itemIds), ...(at === undefined ? [] : [at])],
  );
  const byItem = groupedBy(found, (row) => row.itemId);
  return new Map(
    [...byItem].map(([itemId, own]) => [itemId, own.map((row) => findingFacts(row, at))]),
  );
}

interface FindingRow {
  id: string;
  itemId: string;
  severity: FindingSeverity;
  note: string;
  seenAt: string;
  /** Null while it is open. */
  settledAt: string | null;
}

const findingFacts = (
  { id, note, severity, seenAt, settledAt }: FindingRow,
  at: string | undefined,
): FindingFacts => ({
  findingId: id,
  description: note,
  isOpen: settledAt === null || (at !== undefined && settledAt > at),
  seenAtMs: Date.parse(seenAt),
  settledAtMs: settledAt === null ? null : Date.parse(settledAt),
  isBlocking: severity === 'BLOCKING',
  // What can hurt is a hazard of its own (`readHazards`) and stands in the way by itself.
  isElectricalHazard: false,
});
