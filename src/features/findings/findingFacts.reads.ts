import { groupedBy } from '../../db/groupedBy.js';
import { listParameter } from '../../db/dialect.js';
import type { RowSource } from '../../db/rowSource.js';
import { closedAt, type ClosedSpell } from '../../domain/readiness/closedSpells.js';
import type { FindingFacts } from '../../domain/readiness/readinessFacts.js';
import { readClosings, type ClosableRow } from '../history/closings.reads.js';
import type { FindingSeverity } from './findingSeverity.js';

/**
 * The findings of many items, for readiness; an item without any has no entry.
 * @param at an instant: every finding seen by then, as it stood; left out: those open now.
 */
export async function readFindings(
  source: RowSource,
  itemIds: readonly string[],
  at?: string,
): Promise<Map<string, FindingFacts[]>> {
  const { rows, dialect } = source;
  const found = await rows<FindingRow>(
    `SELECT finding.id AS "id", finding.version AS "version", finding.item_id AS "itemId",
       finding.severity AS "severity", finding.note AS "note", finding.seen_at AS "seenAt",
       finding.settled_at AS "closedAt", finding.status AS "how"
     FROM finding WHERE ${dialect.isAnyOf('finding.item_id')}
       AND ${at === undefined ? `finding.status = 'OPEN'` : 'finding.seen_at <= ?'}
     ORDER BY finding.seen_at, finding.id`,
    [listParameter(itemIds), ...(at === undefined ? [] : [at])],
  );
  const columns = { closedAt: 'settledAt', how: 'status' };
  const settled =
    at === undefined ? undefined : await readClosings(source, 'finding', columns, found);
  const settledThen = ({ id }: FindingRow) =>
    at === undefined ? undefined : closedAt(settled?.get(id) ?? [], at);
  const byItem = groupedBy(found, (row) => row.itemId);
  return new Map(
    [...byItem].map(([itemId, own]) => [
      itemId,
      own.map((row) => findingFacts(row, settledThen(row))),
    ]),
  );
}

interface FindingRow extends ClosableRow {
  itemId: string;
  severity: FindingSeverity;
  note: string;
  seenAt: string;
}

const findingFacts = (
  { id, note, severity, seenAt }: FindingRow,
  settled: ClosedSpell | undefined,
): FindingFacts => ({
  findingId: id,
  description: note,
  isOpen: settled === undefined,
  seenAtMs: Date.parse(seenAt),
  settledAtMs: settled === undefined ? null : Date.parse(settled.from),
  isBlocking: severity === 'BLOCKING',
  // What can hurt is a hazard of its own (`readHazards`) and stands in the way by itself.
  isElectricalHazard: false,
});
