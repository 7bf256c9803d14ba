import { groupedBy } from '../../db/groupedBy.js';
import { listParameter } from '../../db/dialect.js';
import type { RowSource } from '../../db/rowSource.js';
import { fitOutCompleteness } from '../../domain/completeness/fitOutCompleteness.js';
import { readCompletenessFacts } from '../inspections/completenessFacts.reads.js';
import { stockLevels } from '../stock/stockLevels.js';

/** One ground for needing a part. */
interface Ground {
  itemId: string;
  partTypeId: string | null;
  /** Words from the wanted list, where there is no part type. */
  description: string | null;
  kind: 'PLACE' | 'TASK' | 'WANT' | 'ASIDE';
  designator: string | null;
  quantity: number;
}

type CountedRow = Omit<Ground, 'quantity'> & { quantity: number | string };

/** Every ground for every item; at a fixed number of statements. */
export async function readBillGrounds(
  source: RowSource,
  itemIds: readonly string[],
  withCapacitors: boolean,
  nowMs: number,
): Promise<Map<string, Ground[]>> {
  const { rows, dialect } = source;
  const ids = listParameter(itemIds);
  const counted = await rows<CountedRow>(
    `SELECT project.item_id AS "itemId", task_part.part_type_id AS "partTypeId",
       CAST(NULL AS TEXT) AS "description", 'TASK' AS "kind", CAST(NULL AS TEXT) AS "designator",
       SUM(task_part.quantity) AS "quantity"
     FROM task_part JOIN task ON task.id = task_part.task_id
       JOIN project ON project.id = task.project_id
     WHERE task.status NOT IN ('DONE', 'DROPPED') AND ${dialect.isAnyOf('project.item_id')}
     GROUP BY project.item_id, task_part.part_type_id
     UNION ALL
     SELECT project.item_id, stock_lot.part_type_id, NULL, 'ASIDE', NULL,
       SUM(${stockLevels.openOfReservation})
     FROM stock_reservation JOIN stock_lot ON stock_lot.id = stock_reservation.lot_id
       JOIN task ON task.id = stock_reservation.task_id
       JOIN project ON project.id = task.project_id
     WHERE stock_lot.part_type_id IS NOT NULL AND ${dialect.isAnyOf('project.item_id')}
     GROUP BY project.item_id, stock_lot.part_type_id
     UNION ALL
     SELECT want.item_id, want.part_type_id, want.description, 'WANT', want.designator,
       want.quantity - COALESCE((SELECT SUM(stock_lot.quantity) FROM find
         JOIN stock_lot ON stock_lot.id = find.stock_lot_id WHERE find.want_id = want.id), 0)
     FROM want WHERE want.dropped_at IS NULL AND ${dialect.isAnyOf('want.item_id')}`,
    [ids, ids, ids],
  );
  const facts = await readCompletenessFacts(source, itemIds);
  const capacitors = withCapacitors ? await readCapacitorTypes(source) : new Set<string>();
  const places = itemIds.flatMap((itemId): Ground[] => {
    const own = facts.get(itemId);
    if (!own) return [];
    const { positions } = fitOutCompleteness(own.fitOut, own.checks, own.fittings, nowMs);
    return positions.flatMap(({ state, positionKey }, index) => {
      const partTypeId = own.fitOut[index]?.partTypeId ?? null;
      const isReplaced = partTypeId !== null && capacitors.has(partTypeId);
      if (state !== 'MISSING' && state !== 'WRONG' && !isReplaced) return [];
      const designator = positionKey;
      return [{ itemId, partTypeId, description: null, kind: 'PLACE', designator, quantity: 1 }];
    });
  });
  const all = counted.map((row): Ground => ({ ...row, quantity: Number(row.quantity) }));
  return groupedBy(
    [...places, ...all.filter(({ quantity }) => quantity > 0)],
    ({ itemId }) => itemId,
  );
}

async function readCapacitorTypes({ rows }: RowSource): Promise<Set<string>> {
  const found = await rows<{ id: string }>(
    `SELECT id AS "id" FROM part_type WHERE kind = 'CAPACITOR'`,
  );
  return new Set(found.map(({ id }) => id));
}
