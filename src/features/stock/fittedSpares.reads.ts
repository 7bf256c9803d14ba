import type { ApiContext } from '../../api/kit/apiContext.js';
import type { Relation, Row } from '../../api/kit/typeReads.js';
import { listParameter } from '../../db/dialect.js';
import { groupedBy } from '../../db/groupedBy.js';
import { sumByCurrency } from '../../domain/money/sumByCurrency.js';
import type { MoneyAmount } from '../../api/kit/money.type.js';
import { moneyAmount } from '../money/moneyAmount.js';
import { costOfDraw } from './stockCosts.reads.js';

interface DrawRow extends Row {
  ownerId: string;
  lotId: string;
  quantity: number;
}

/** For an item: what was fitted in it, and what its tasks used up; for a project: its tasks alone. */
const drawsOf = {
  item: `COALESCE(fitting.item_id, project.item_id)`,
  project: 'project.id',
} as const;

const method =
  'What left the shelf for it (fitted, or used up by its tasks), each unit at its share of what its lot cost, first in, first out.';
const assumptions = [
  'Not part of the cost to date: whoever recorded the purchase as an expense as well would count it twice. Add the two where no expense was recorded.',
];

async function readSpares(
  context: ApiContext,
  owner: keyof typeof drawsOf,
  ids: readonly string[],
): Promise<unknown[]> {
  const { reader } = context.database;
  const draws = await reader.rows<DrawRow>(
    `SELECT "id", "lotId", "quantity", "ownerId" FROM (
       SELECT stock_draw.id AS "id", stock_draw.lot_id AS "lotId",
         stock_draw.quantity AS "quantity", ${drawsOf[owner]} AS "ownerId"
       FROM stock_draw
         LEFT JOIN fitting ON fitting.id = stock_draw.fitting_id
         LEFT JOIN task ON task.id = stock_draw.task_id
         LEFT JOIN project ON project.id = task.project_id
       WHERE stock_draw.quantity > 0 AND stock_draw.reason IN ('FITTED', 'CONSUMED')
     ) AS owned WHERE ${reader.dialect.isAnyOf('"ownerId"')} ORDER BY "id"`,
    [listParameter(ids)],
  );
  const { values } = await costOfDraw(context, draws, {}, new Set());
  const costed = draws.map((draw, index) => ({
    ...draw,
    cost: values[index] as { amounts: MoneyAmount[] } | null,
  }));
  const byOwner = groupedBy(costed, ({ ownerId }) => ownerId);
  return ids.map((id) => {
    const own = byOwner.get(id) ?? [];
    const units = (some: typeof own): number =>
      some.reduce((sum, { quantity }) => sum + quantity, 0);
    const uncosted = own.filter(({ cost }) => cost === null);
    return {
      amounts: sumByCurrency(own.flatMap(({ cost }) => cost?.amounts ?? [])).map((sum) =>
        moneyAmount(sum.minorUnits, sum.currency),
      ),
      unitCount: units(own),
      uncostedUnitCount: units(uncosted),
      basis: {
        method,
        counted: [
          { what: 'units from the shelf', count: units(own) },
          { what: 'units whose lot has no cost', count: units(uncosted) },
        ],
        assumptions,
        asOf: new Date(context.nowMs).toISOString(),
      },
    };
  });
}

const sparesOf =
  (owner: keyof typeof drawsOf): Relation =>
  async (context, parents) => {
    const values = await readSpares(
      context,
      owner,
      parents.map(({ id }) => id),
    );
    return { values, children: [], childType: null };
  };

export const fittedSpareRelationsOfItem = { fittedSpares: sparesOf('item') };
export const fittedSpareRelationsOfProject = { fittedSpares: sparesOf('project') };
