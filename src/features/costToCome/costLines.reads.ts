import type { ApiContext } from '../../api/kit/apiContext.js';
import { listParameter } from '../../db/dialect.js';
import { groupedBy } from '../../db/groupedBy.js';
import type { RowSource } from '../../db/rowSource.js';
import type { Standard } from '../../domain/worth/standards.js';
import { readMissing } from '../replacements/missingParts.reads.js';
import { stockLevels } from '../stock/stockLevels.js';
import type { PlannedCostKind } from './plannedCostKind.js';

/** A part that a project needs, with how many are at hand. */
export interface NeededPart {
  partTypeId: string;
  designation: string;
  needed: number;
  inHand: number;
}

export interface NeededParts {
  parts: NeededPart[];
  /** Needed, of no known type: no price can be noted for them. */
  unknownCount: number;
}

interface NeedRow {
  partTypeId: string | null;
  count: number;
}

/**
 * Parts needed by item: required positions that are empty or wrongly filled, and open wants for the
 * item or its tasks that name no such position; less what lies free in stock, or is put aside for
 * its tasks.
 */
export async function readNeededParts(
  context: ApiContext,
  itemIds: readonly string[],
): Promise<Map<string, NeededParts>> {
  const { reader } = context.database;
  const missing = await readMissing(context, itemIds);
  const wants = groupedBy(await readWantedParts(reader, itemIds), ({ itemId }) => itemId);
  const needs = itemIds.map((itemId, index): NeedRow[] => {
    const required = (missing[index] ?? []).filter(({ isRequired }) => isRequired);
    const covered = new Set(required.map((row) => row['positionId']));
    return [
      ...required.map(({ partTypeId }) => ({ partTypeId, count: 1 })),
      ...(wants.get(itemId) ?? [])
        .filter(({ positionId }) => positionId === null || !covered.has(positionId))
        .map(({ partTypeId, openQuantity }) => ({ partTypeId, count: Number(openQuantity) })),
    ];
  });
  const types = [...new Set(needs.flat().flatMap(({ partTypeId }) => partTypeId ?? []))];
  const stock = await readInHand(reader, types, itemIds);
  return new Map(
    itemIds.map((itemId, index) => {
      const counts = new Map<string, number>();
      let unknownCount = 0;
      for (const { partTypeId, count } of needs[index] ?? []) {
        if (partTypeId === null) unknownCount += count;
        else counts.set(partTypeId, (counts.get(partTypeId) ?? 0) + count);
      }
      const parts = [...counts].map(([partTypeId, needed]) => {
        const held = stock.get(partTypeId);
        const own = held?.putAside.get(itemId) ?? 0;
        const inHand = Math.min(needed, (held?.free ?? 0) + own);
        return { partTypeId, designation: held?.designation ?? '', needed, inHand };
      });
      return [itemId, { parts, unknownCount }];
    }),
  );
}

interface WantedPart {
  itemId: string;
  partTypeId: string | null;
  positionId: string | null;
  openQuantity: number | string;
}

const readWantedParts = ({ rows, dialect }: RowSource, itemIds: readonly string[]) =>
  rows<WantedPart>(
    `SELECT item.id AS "itemId", want.part_type_id AS "partTypeId",
       fit_out_position.id AS "positionId",
       want.quantity - COALESCE((SELECT SUM(stock_lot.quantity) FROM find
         JOIN stock_lot ON stock_lot.id = find.stock_lot_id WHERE find.want_id = want.id), 0)
         AS "openQuantity"
     FROM want LEFT JOIN task ON task.id = want.task_id
       LEFT JOIN project ON project.id = task.project_id
       JOIN item ON item.id = COALESCE(want.item_id, project.item_id)
       LEFT JOIN fit_out_position ON fit_out_position.model_id = item.model_id
         AND fit_out_position.designator = want.designator
     WHERE want.dropped_at IS NULL AND ${dialect.isAnyOf('item.id')}
       AND want.quantity > COALESCE((SELECT SUM(stock_lot.quantity) FROM find
         JOIN stock_lot ON stock_lot.id = find.stock_lot_id WHERE find.want_id = want.id), 0)`,
    [listParameter(itemIds)],
  );

async function readInHand(
  { rows, dialect }: RowSource,
  partTypeIds: readonly string[],
  itemIds: readonly string[],
) {
  const types = listParameter(partTypeIds);
  const free = await rows<{ id: string; designation: string; free: number | string }>(
    `SELECT part_type.id AS "id", part_type.designation AS "designation",
       COALESCE((SELECT SUM(${stockLevels.available}) FROM stock_lot
         WHERE stock_lot.part_type_id = part_type.id), 0) AS "free"
     FROM part_type WHERE ${dialect.isAnyOf('part_type.id')}`,
    [types],
  );
  const aside = await rows<{ partTypeId: string; itemId: string; open: number | string }>(
    `SELECT stock_lot.part_type_id AS "partTypeId", project.item_id AS "itemId",
       SUM(${stockLevels.openOfReservation}) AS "open"
     FROM stock_reservation JOIN stock_lot ON stock_lot.id = stock_reservation.lot_id
       JOIN task ON task.id = stock_reservation.task_id
       JOIN project ON project.id = task.project_id
     WHERE stock_reservation.released_at IS NULL AND ${dialect.isAnyOf('stock_lot.part_type_id')}
       AND ${dialect.isAnyOf('project.item_id')}
     GROUP BY stock_lot.part_type_id, project.item_id`,
    [types, listParameter(itemIds)],
  );
  const byType = new Map(
    free.map((row) => [
      row.id,
      { designation: row.designation, free: Number(row.free), putAside: new Map<string, number>() },
    ]),
  );
  for (const { partTypeId, itemId, open } of aside) {
    byType.get(partTypeId)?.putAside.set(itemId, Number(open));
  }
  return byType;
}

/** A planned cost that is still to come. */
export interface PlannedCostRow {
  id: string;
  projectId: string;
  kind: PlannedCostKind;
  description: string;
  optimisticMinorUnits: number;
  likelyMinorUnits: number;
  pessimisticMinorUnits: number;
  currency: string;
  neededFrom: Standard | null;
}

export const readPlannedCosts = ({ rows, dialect }: RowSource, projectIds: readonly string[]) =>
  rows<PlannedCostRow>(
    `SELECT id AS "id", project_id AS "projectId", kind AS "kind", description AS "description",
       optimistic_minor_units AS "optimisticMinorUnits", likely_minor_units AS "likelyMinorUnits",
       pessimistic_minor_units AS "pessimisticMinorUnits", currency AS "currency",
       needed_from AS "neededFrom"
     FROM planned_cost WHERE settled_at IS NULL AND ${dialect.isAnyOf('project_id')}
     ORDER BY recorded_at, id`,
    [listParameter(projectIds)],
  );
