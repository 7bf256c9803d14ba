import { groupedBy } from '../../db/groupedBy.js';
import { listParameter } from '../../db/dialect.js';
import type { RowSource } from '../../db/rowSource.js';
import { nameKey } from '../../domain/nameKey.js';
import type { FinalCheckFacts, ProcedureFacts } from '../../domain/readiness/readinessFacts.js';

/** What readiness needs to know of an item's final checks. */
export interface RecordedFinalChecks {
  /** Each procedure ever recorded for the item, valid as long as its latest check says. */
  readonly procedures: readonly ProcedureFacts[];
  readonly finalChecks: readonly FinalCheckFacts[];
}

/**
 * The final checks of many items in one statement; an item without any has no entry.
 * @param at only checks made by then; left out: all.
 */
export async function readFinalChecks(
  { rows, dialect }: RowSource,
  itemIds: readonly string[],
  at?: string,
): Promise<Map<string, RecordedFinalChecks>> {
  const found = await rows<CheckRow>(
    `SELECT final_check.id AS "id", final_check.item_id AS "itemId",
       final_check.procedure AS "procedure", final_check.checked_at AS "checkedAt",
       final_check.is_passed AS "isPassed", final_check.valid_days AS "validDays"
     FROM final_check WHERE ${dialect.isAnyOf('final_check.item_id')}${
       at === undefined ? '' : ' AND final_check.checked_at <= ?'
     }
     ORDER BY final_check.checked_at, final_check.id`,
    [listParameter(itemIds), ...(at === undefined ? [] : [at])],
  );
  const byItem = groupedBy(found, (row) => row.itemId);
  return new Map([...byItem].map(([itemId, checks]) => [itemId, recorded(checks)]));
}

interface CheckRow {
  id: string;
  itemId: string;
  procedure: string;
  checkedAt: string;
  /** SQLite gives 0 or 1. */
  isPassed: boolean | number;
  validDays: number;
}

function recorded(checks: readonly CheckRow[]): RecordedFinalChecks {
  const procedures = [...groupedBy(checks, (check) => nameKey(check.procedure))].map(
    ([procedureCode, ofProcedure]) => {
      const latest = ofProcedure.at(-1) as CheckRow;
      return { procedureCode, name: latest.procedure, validityDays: latest.validDays };
    },
  );
  const finalChecks = checks.map((check) => ({
    checkId: check.id,
    procedureCode: nameKey(check.procedure),
    isPassed: Boolean(check.isPassed),
    doneAtMs: Date.parse(check.checkedAt),
  }));
  return { procedures, finalChecks };
}
