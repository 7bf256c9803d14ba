import { groupedBy } from '../../db/groupedBy.js';
import { listParameter } from '../../db/dialect.js';
import type { RowSource } from '../../db/rowSource.js';

/** What a record said, and from when. */
export interface RowVersion<Row> {
  /** The moment of writing; empty for what the history found there when it began. */
  writtenAt: string;
  row: Partial<Row>;
}

/**
 * All that some records of one kind ever said, oldest first, in one statement. A record of which the
 * history knows nothing has no entry. What was taken out of the history is missing from a row.
 */
export async function readRowVersions<Row extends object>(
  { rows, dialect }: RowSource,
  table: string,
  ids: readonly string[],
): Promise<Map<string, RowVersion<Row>[]>> {
  if (ids.length === 0) return new Map();
  const changes = await rows<ChangeRow>(
    `SELECT record_id AS "recordId", changed_at AS "writtenAt", "before" AS "before",
       "after" AS "after"
     FROM change WHERE record_table = ? AND ${dialect.isAnyOf('record_id')}
     ORDER BY changed_at, sequence, id`,
    [table, listParameter(ids)],
  );
  const byRecord = groupedBy(changes, ({ recordId }) => recordId);
  return new Map(
    [...byRecord].map(([id, own]) => {
      const found = own[0]?.before ?? null;
      const written = own.flatMap(({ writtenAt, after }) =>
        after === null ? [] : [{ writtenAt, row: parsed<Row>(after) }],
      );
      return [id, found === null ? written : [{ writtenAt: '', row: parsed(found) }, ...written]];
    }),
  );
}

interface ChangeRow {
  recordId: string;
  writtenAt: string;
  before: string | null;
  after: string | null;
}

const parsed = <Row>(text: string): Partial<Row> => JSON.parse(text) as Partial<Row>;
