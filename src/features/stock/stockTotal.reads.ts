import type { Relation } from '../../api/kit/typeReads.js';
import { listParameter } from '../../db/dialect.js';
import { stockLevels } from './stockLevels.js';

interface LevelRow {
  partTypeId: string;
  lots: number | string;
  onHand: number | string;
  reserved: number | string;
}

/** All lots of a part type together, in one statement for any number of part types. */
const stock: Relation = async ({ database: { reader }, nowMs }, partTypes) => {
  const rows = await reader.rows<LevelRow>(
    `SELECT stock_lot.part_type_id AS "partTypeId", COUNT(*) AS "lots",
       SUM(${stockLevels.onHand}) AS "onHand", SUM(${stockLevels.reserved}) AS "reserved"
     FROM stock_lot WHERE ${reader.dialect.isAnyOf('stock_lot.part_type_id')}
     GROUP BY stock_lot.part_type_id`,
    [listParameter(partTypes.map(({ id }) => id))],
  );
  const byPart = new Map(rows.map((row) => [row.partTypeId, row]));
  const asOf = new Date(nowMs).toISOString();
  const values = partTypes.map(({ id }) => {
    const row = byPart.get(id);
    const onHandQuantity = Number(row?.onHand ?? 0);
    const reservedQuantity = Number(row?.reserved ?? 0);
    return {
      onHandQuantity,
      reservedQuantity,
      availableQuantity: onHandQuantity - reservedQuantity,
      basis: {
        method:
          'What came to the shelf less what left it, over all lots; reserved: put aside for tasks.',
        counted: [{ what: 'lots', count: Number(row?.lots ?? 0) }],
        assumptions: [],
        asOf,
      },
    };
  });
  return { values, children: [], childType: null };
};

export const stockRelationsOfPartType = { stock };
