import type { Reader } from '../../db/reader.js';

export interface WorkSums {
  items: number;
  computedAt: string | null;
  budgetedMinutes: number;
  earnedMinutes: number;
  requiredPositions: number;
  presentPositions: number;
  openTasks: number;
  refutedTasks: number;
  expectedRemainingMinutes: number;
  remainingSquareMinutes: number;
}

const sum = (column: string): string => `CAST(COALESCE(SUM(${column}), 0) AS bigint)`;

/** Sums over the items that are still in the collection. */
export async function readWorkSums(reader: Reader): Promise<WorkSums> {
  const [sums] = await reader.rows<WorkSums>(
    `SELECT COUNT(*) AS "items", MAX(computed_at) AS "computedAt",
       ${sum('budgeted_minutes')} AS "budgetedMinutes", ${sum('earned_minutes')} AS "earnedMinutes",
       ${sum('required_positions')} AS "requiredPositions",
       ${sum('present_positions')} AS "presentPositions", ${sum('open_tasks')} AS "openTasks",
       ${sum('refuted_tasks')} AS "refutedTasks",
       ${sum('expected_remaining_minutes')} AS "expectedRemainingMinutes",
       ${sum('remaining_square_minutes')} AS "remainingSquareMinutes"
     FROM item_standing JOIN item ON item.id = item_standing.item_id
     WHERE item.retired_at IS NULL`,
  );
  return sums as WorkSums;
}

/** Counted seconds by task kind and month, over everything that was ever worked on. */
export const readHourSums = (reader: Reader) =>
  reader.rows<{ taskKind: string; localMonth: string; seconds: number }>(
    `SELECT task_kind AS "taskKind", local_month AS "localMonth", ${sum('seconds')} AS "seconds"
     FROM item_hours GROUP BY task_kind, local_month`,
  );

export async function readSessionCounts(reader: Reader) {
  const running = await reader.rows<{ startedAt: string }>(
    `SELECT started_at AS "startedAt" FROM work_session WHERE ended_at IS NULL
     ORDER BY started_at`,
  );
  const [finished] = await reader.rows<{ sessions: number; repeatedSeconds: number }>(
    `SELECT (SELECT COUNT(*) FROM work_session WHERE ended_at IS NOT NULL) AS "sessions",
       (SELECT ${sum('repeated_seconds')} FROM item_standing) AS "repeatedSeconds"`,
  );
  return { running: running.map(({ startedAt }) => startedAt), ...finished };
}

/** Money to date of all items, by currency. */
export const readCostSums = (reader: Reader) =>
  reader.rows<{
    currency: string;
    items: number;
    price: number;
    extras: number;
    expenses: number;
    total: number;
  }>(
    `SELECT currency AS "currency", COUNT(*) AS "items", ${sum('price_minor_units')} AS "price",
       ${sum('extra_minor_units')} AS "extras", ${sum('expense_minor_units')} AS "expenses",
       ${sum('total_minor_units')} AS "total"
     FROM item_cost GROUP BY currency ORDER BY currency`,
  );

/** How many rigs of the collection stand at each readiness rank at an instant. */
export const readReadinessCounts = (reader: Reader, now: string) =>
  reader.rows<{ rank: number; rigs: number }>(
    `SELECT CASE WHEN readiness_rank = 3 AND checks_valid_until <= ? THEN 2
       ELSE readiness_rank END AS "rank", COUNT(*) AS "rigs"
     FROM item_standing JOIN item ON item.id = item_standing.item_id
     WHERE item.kind = 'RIG' AND item.retired_at IS NULL GROUP BY 1`,
    [now],
  );
