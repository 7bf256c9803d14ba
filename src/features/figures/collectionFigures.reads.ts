import type { Reader } from '../../db/reader.js';
import { readChecksFallingDue } from '../reports/checksFallingDue.reads.js';
import { readMaintenanceFallingDue } from '../reports/maintenanceFallingDue.reads.js';
import {
  readCostSums,
  readHourSums,
  readReadinessCounts,
  readSessionCounts,
  readWorkSums,
} from '../standing/collectionStanding.reads.js';

interface Counts {
  rigs: number;
  accessories: number;
  openHazards: number;
  loansOverdue: number;
  logEntries: number | string;
}

/** Everything that a screen of figures is drawn from; the same sums as the API gives. */
export async function readCollectionFigures(reader: Reader, nowMs: number) {
  const now = new Date(nowMs).toISOString();
  const [counts] = await reader.rows<Counts>(
    `SELECT
       (SELECT COUNT(*) FROM item WHERE kind = 'RIG' AND retired_at IS NULL) AS "rigs",
       (SELECT COUNT(*) FROM item WHERE kind = 'ACCESSORY' AND retired_at IS NULL)
         AS "accessories",
       (SELECT COUNT(*) FROM hazard JOIN item ON item.id = hazard.item_id
         WHERE hazard.cleared_at IS NULL AND item.retired_at IS NULL) AS "openHazards",
       (SELECT COUNT(*) FROM loan WHERE returned_on IS NULL AND due_on < ?) AS "loansOverdue",
       (SELECT COALESCE(MAX(sequence), 0) FROM change) AS "logEntries"`,
    [now.slice(0, 10)],
  );
  const isOver = ({ dueAtMs }: { dueAtMs: number }): boolean => dueAtMs <= nowMs;
  const checks = await readChecksFallingDue(reader);
  return {
    counts: counts as Counts,
    work: await readWorkSums(reader),
    hours: await readHourSums(reader),
    costs: await readCostSums(reader),
    readiness: await readReadinessCounts(reader, now),
    runningTimers: (await readSessionCounts(reader)).running.length,
    maintenanceOverdue: (await readMaintenanceFallingDue(reader, nowMs)).filter(isOver).length,
    checksStale: checks.filter(({ lapsesAtMs }) => lapsesAtMs <= nowMs).length,
  };
}

export type CollectionFigures = Awaited<ReturnType<typeof readCollectionFigures>>;
