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
  const reopened =
    at === undefined ? undefined : await readReopenedLater({ rows, dialect }, found, at);
  for (const row of found) row.settledAt ??= reopened?.get(row.id) ?? null;
  const byItem = groupedBy(found, (row) => row.itemId);
  return new Map(
    [...byItem].map(([itemId, own]) => [itemId, own.map((row) => findingFacts(row, at))]),
  );
}

/**
 * When findings that are open now had been settled, where that held at an instant and they were
 * opened again after it: the row forgets that, the history does not.
 */
async function readReopenedLater(
  { rows, dialect }: Pick<RowSource, 'rows' | 'dialect'>,
  found: readonly FindingRow[],
  at: string,
): Promise<Map<string, string>> {
  const open = found.filter(({ settledAt }) => settledAt === null).map(({ id }) => id);
  if (open.length === 0) return new Map();
  const later = await rows<{ recordId: string; before: string | null; after: string | null }>(
    `SELECT record_id AS "recordId", before AS "before", after AS "after" FROM change
     WHERE record_table = 'finding' AND changed_at > ? AND ${dialect.isAnyOf('record_id')}
     ORDER BY changed_at, id`,
    [at, listParameter(open)],
  );
  const settled = new Map<string, string>();
  const seen = new Set<string>();
  for (const { recordId, before, after } of later) {
    const was = settledAtIn(before);
    // The first opening again after that instant ends the settlement that may have held at it.
    if (seen.has(recordId) || typeof was !== 'string' || settledAtIn(after) !== null) continue;
    seen.add(recordId);
    if (was <= at) settled.set(recordId, was);
  }
  return settled;
}

const settledAtIn = (row: string | null): unknown =>
  row === null ? undefined : (JSON.parse(row) as { settledAt?: unknown }).settledAt;

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
