import type { ApiContext } from '../../api/kit/apiContext.js';
import type { Row } from '../../api/kit/typeReads.js';
import type { ReportPeriod } from './reportPeriod.js';

export interface FinishedTask {
  itemName: string;
  project: string;
  task: string;
  finishedAt: string;
}

export interface FittedPart {
  inventoryNumber: string;
  designator: string;
  part: string;
  at: string;
  event: 'FITTED' | 'REMOVED';
}

export interface ReportedReading {
  id: string;
  inventoryNumber: string;
  subject: string;
  subjectId: string;
  quantity: string;
  value: string;
  unit: string;
  tier: string;
  takenAt: string;
}

const ofItem = (column: string, itemId: string | null): string =>
  itemId === null ? '' : `AND ${column} = ?`;
const optional = (itemId: string | null): string[] => (itemId === null ? [] : [itemId]);

/** Tasks finished in the period, in the order of their end. */
export const readFinishedTasks = (
  { database: { reader } }: ApiContext,
  { from, until }: ReportPeriod,
  itemId: string | null,
): Promise<FinishedTask[]> =>
  reader.rows<FinishedTask>(
    `SELECT item.inventory_number AS "itemName", project.title AS "project", task.title AS "task",
       task.finished_at AS "finishedAt"
     FROM task JOIN project ON project.id = task.project_id JOIN item ON item.id = project.item_id
     WHERE task.status = 'DONE' AND task.finished_at >= ? AND task.finished_at < ?
       ${ofItem('item.id', itemId)} ORDER BY task.finished_at, task.id`,
    [from, until, ...optional(itemId)],
  );

/** Components fitted or removed in the period. */
export async function readFittedParts(
  { database: { reader } }: ApiContext,
  { from, until }: ReportPeriod,
  itemId: string | null,
): Promise<FittedPart[]> {
  const event = (column: string, word: string) =>
    `SELECT item.inventory_number AS "inventoryNumber", fitting.designator AS "designator",
       COALESCE(part_type.designation, component.marking, 'part not named') AS "part",
       fitting.${column} AS "at", '${word}' AS "event"
     FROM fitting JOIN item ON item.id = fitting.item_id
     JOIN component ON component.id = fitting.component_id
     LEFT JOIN part_type ON part_type.id = component.part_type_id
     WHERE fitting.${column} >= ? AND fitting.${column} < ? ${ofItem('item.id', itemId)}`;
  return reader.rows<FittedPart>(
    `${event('fitted_at', 'FITTED')} UNION ALL ${event('removed_at', 'REMOVED')}
     ORDER BY "at", "inventoryNumber", "designator"`,
    [from, until, ...optional(itemId), from, until, ...optional(itemId)],
  );
}

/**
 * For each quantity that was measured in the period, on each subject and tier: the last reading
 * before it (else the first in it) and the last in it, each with its verdict.
 */
export async function readBeforeAndAfter(
  context: ApiContext,
  period: ReportPeriod,
  itemId: string | null,
): Promise<{ before: ReportedReading; after: ReportedReading; verdicts: [string, string] }[]> {
  const readings = await readingsUpTo(context, period, itemId);
  const series = new Map<string, ReportedReading[]>();
  for (const reading of readings) {
    const { subjectId, quantity, tier } = reading;
    const key = `${subjectId} ${tier} ${quantity.toLowerCase()}`;
    const known = series.get(key);
    if (known) known.push(reading);
    else series.set(key, [reading]);
  }
  const pairs = [...series.values()].flatMap((list) => {
    const inPeriod = list.filter(({ takenAt }) => takenAt >= period.from);
    const after = inPeriod.at(-1);
    const before = list.findLast(({ takenAt }) => takenAt < period.from) ?? inPeriod[0];
    return after && before ? [{ before, after }] : [];
  });
  const words = await verdictWords(
    context,
    pairs.flatMap(({ before, after }) => [before.id, after.id]),
  );
  return pairs.map((pair) => ({
    ...pair,
    verdicts: [words.get(pair.before.id) ?? 'NO_LIMIT', words.get(pair.after.id) ?? 'NO_LIMIT'],
  }));
}

/** Readings up to the end of the period, of those subjects that were measured in it. */
function readingsUpTo(
  { database: { reader } }: ApiContext,
  { from, until }: ReportPeriod,
  itemId: string | null,
): Promise<ReportedReading[]> {
  // A component's reading is told of the item that it sat in when it was taken.
  return reader.rows<ReportedReading>(
    `SELECT reading.id AS "id", item.inventory_number AS "inventoryNumber",
       COALESCE(fitting.designator, 'the whole') AS "subject",
       COALESCE(reading.component_id, reading.item_id) AS "subjectId",
       reading.quantity AS "quantity", reading.value AS "value", reading.unit AS "unit",
       reading.tier AS "tier", reading.taken_at AS "takenAt"
     FROM reading
     LEFT JOIN fitting ON fitting.component_id = reading.component_id
       AND fitting.fitted_at <= reading.taken_at
       AND (fitting.removed_at IS NULL OR fitting.removed_at > reading.taken_at)
     JOIN item ON item.id = COALESCE(reading.item_id, fitting.item_id)
     WHERE reading.taken_at < ? AND EXISTS (SELECT 1 FROM reading AS recent
       WHERE recent.taken_at >= ? AND recent.taken_at < ?
         AND (recent.item_id = reading.item_id OR recent.component_id = reading.component_id))
       ${ofItem('item.id', itemId)}
     ORDER BY item.inventory_number, reading.taken_at, reading.id`,
    [until, from, until, ...optional(itemId)],
  );
}

/** The verdicts as the API gives them, all at once. */
async function verdictWords(
  context: ApiContext,
  ids: readonly string[],
): Promise<Map<string, string>> {
  const reads = context.reads.get('Reading');
  const rows: Row[] = (await reads?.byIds(context, [...new Set(ids)])) ?? [];
  const loaded = await reads?.relations['verdict']?.(context, rows, {}, new Set());
  return new Map(
    rows.map(({ id }, index) => [
      id,
      (loaded?.values[index] as { word: string } | undefined)?.word ?? 'NO_LIMIT',
    ]),
  );
}
