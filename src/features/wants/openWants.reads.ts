import { listParameter } from '../../db/dialect.js';
import type { RowSource } from '../../db/rowSource.js';
import { fitOutCompleteness } from '../../domain/completeness/fitOutCompleteness.js';
import { onItsWay } from '../../domain/parts/openOrder.js';
import { byUrgency, wantUrgency, type WantUrgency } from '../../domain/wants/wantUrgency.js';
import { readCompletenessFacts } from '../inspections/completenessFacts.reads.js';
import { readOpenOrders, type OrderOnItsWay } from '../orders/openOrders.reads.js';

export interface WantRow {
  id: string;
  version: number;
  partTypeId: string | null;
  description: string | null;
  itemId: string | null;
  designator: string | null;
  taskId: string | null;
  quantity: number;
  ceilingMinorUnits: number | null;
  ceilingCurrency: string | null;
  droppedAt: string | null;
  note: string | null;
  partTypeName: string | null;
  inventoryNumber: string | null;
  foundQuantity: number;
}

export interface StandingWant extends WantRow {
  urgency: WantUrgency;
  openTasksWaiting: number;
  openQuantity: number;
  onOrderQuantity: number;
  /** What is on its way for it. */
  orders: OrderOnItsWay[];
}

const columns = `want.id AS "id", want.version AS "version", want.part_type_id AS "partTypeId",
  want.description AS "description", want.item_id AS "itemId", want.designator AS "designator",
  want.task_id AS "taskId", want.quantity AS "quantity",
  want.ceiling_minor_units AS "ceilingMinorUnits", want.ceiling_currency AS "ceilingCurrency",
  want.dropped_at AS "droppedAt", want.note AS "note",
  part_type.designation AS "partTypeName", item.inventory_number AS "inventoryNumber",
  CAST(COALESCE((SELECT SUM(stock_lot.quantity) FROM find
    JOIN stock_lot ON stock_lot.id = find.stock_lot_id WHERE find.want_id = want.id), 0)
    AS INTEGER) AS "foundQuantity"`;

/** How many wants one sheet, and one answer, holds. */
const mostWants = 500;

/** Wants by their ids, or all that are open; the most urgent first. */
export async function readWants(
  source: RowSource,
  ids: readonly string[] | null,
  nowMs: number,
): Promise<StandingWant[]> {
  const rows = await source.rows<WantRow>(
    `SELECT * FROM (SELECT ${columns} FROM want
       LEFT JOIN part_type ON part_type.id = want.part_type_id
       LEFT JOIN item ON item.id = want.item_id) AS listed
     WHERE ${ids === null ? '"droppedAt" IS NULL AND "foundQuantity" < "quantity"' : source.dialect.isAnyOf('"id"')}
     ORDER BY "id" LIMIT ${mostWants}`,
    ids === null ? [] : [listParameter(ids)],
  );
  const waiting = await readTasksWaiting(source, rows);
  const itemIds = [...new Set(rows.flatMap((want) => want.itemId ?? []))];
  const facts = await readCompletenessFacts(source, itemIds);
  const orders = await readOpenOrders(source, { itemIds, wantIds: rows.map(({ id }) => id) });
  return rows
    .map((want) => {
      const openTasksWaiting = waiting.get(want.id) ?? 0;
      const own = want.itemId === null ? undefined : facts.get(want.itemId);
      const position = own?.fitOut.find(({ positionKey }) => positionKey === want.designator);
      const standing =
        own && position
          ? fitOutCompleteness([position], own.checks, own.fittings, nowMs).positions[0]
          : undefined;
      const urgency = wantUrgency({
        openTasksWaiting,
        isForRequiredPosition: position?.isRequired ?? false,
        isPositionFilled: standing?.state === 'PRESENT',
      });
      const openQuantity = Math.max(0, want.quantity - want.foundQuantity);
      const coming = comingFor(want, orders);
      return {
        ...want,
        urgency,
        openTasksWaiting,
        openQuantity,
        onOrderQuantity: coming.quantity,
        orders: coming.orders,
      };
    })
    .sort(byUrgency);
}

/** What names the want; and what is for the same part or place of its set without naming any want. */
function comingFor(want: WantRow, orders: readonly OrderOnItsWay[]) {
  const own = orders.filter(({ wantId }) => wantId === want.id);
  const designators = want.designator === null ? [] : [want.designator];
  const unnamed =
    want.itemId === null
      ? []
      : orders.filter(({ wantId, itemId }) => wantId === null && itemId === want.itemId);
  const others = onItsWay({ ...want, designators }, unnamed);
  const named = own.reduce((sum, { quantity }) => sum + quantity, 0);
  return { quantity: named + others.quantity, orders: [...own, ...others.orders] };
}

/** For each want with an open task: that task and all open ones after it. */
async function readTasksWaiting(
  { rows, dialect }: RowSource,
  wants: readonly WantRow[],
): Promise<Map<string, number>> {
  const counts = await rows<{ wantId: string; tasks: number | string }>(
    `WITH RECURSIVE waiting (want_id, task_id) AS (
       SELECT want.id, task.id FROM want JOIN task ON task.id = want.task_id
       WHERE task.status NOT IN ('DONE', 'DROPPED') AND ${dialect.isAnyOf('want.id')}
       UNION SELECT waiting.want_id, task_predecessor.task_id
       FROM waiting JOIN task_predecessor ON task_predecessor.predecessor_id = waiting.task_id
     )
     SELECT waiting.want_id AS "wantId", COUNT(*) AS "tasks"
     FROM waiting JOIN task ON task.id = waiting.task_id
     WHERE task.status NOT IN ('DONE', 'DROPPED') GROUP BY waiting.want_id`,
    [listParameter(wants.map(({ id }) => id))],
  );
  return new Map(counts.map(({ wantId, tasks }) => [wantId, Number(tasks)]));
}
