import { grouped } from '../../api/kit/relations.js';
import type { Relation, Row, TypeReads } from '../../api/kit/typeReads.js';
import { listParameter } from '../../db/dialect.js';
import { groupedBy } from '../../db/groupedBy.js';
import { originality } from '../../domain/originality/originality.js';
import { readOriginality } from './readOriginality.js';

const originalityOf: Relation = async ({ database: { reader }, nowMs }, items, args) => {
  const asOfMs = args['asOf'] instanceof Date ? args['asOf'].getTime() : nowMs;
  const ids = items.map(({ id }) => id);
  const found = await readOriginality(reader, ids, asOfMs);
  const values = ids.map((itemId) => {
    const { positions, fittingCount } = found.get(itemId) ?? { positions: [], fittingCount: 0 };
    return {
      byPosition: originality(positions.map(({ origin }) => ({ origin, weight: 1 }))),
      byWeight: originality(positions),
      basis: {
        method:
          'Positions of the fit-out that hold the part the set was made with, divided by all positions; by weight, the weights of these. What is unknown is left out of the lower figure and counted into the upper. A part that first sat in another set is a replacement.',
        counted: [
          { what: 'positions of the fit-out', count: positions.length },
          { what: 'fittings recorded', count: fittingCount },
        ],
        assumptions: ['A position without a stated weight weighs 1.'],
        asOf: new Date(asOfMs).toISOString(),
      },
    };
  });
  return { values, children: [], childType: null };
};

const positionHistory: Relation = async ({ database: { reader } }, items) => {
  const fittings = await reader.rows<{ itemId: string; id: string; designator: string }>(
    `SELECT item_id AS "itemId", id AS "id", designator AS "designator" FROM fitting
     WHERE ${reader.dialect.isAnyOf('item_id')} ORDER BY designator, fitted_at, id`,
    [listParameter(items.map(({ id }) => id))],
  );
  const byPlace = groupedBy(fittings, ({ itemId, designator }) =>
    JSON.stringify([itemId, designator]),
  );
  const rows = [...byPlace].map(([id, some]): Row => {
    const { itemId, designator } = some[0] ?? { itemId: '', designator: '' };
    return { id, parentId: itemId, designator, fittingIds: some.map((fitting) => fitting.id) };
  });
  return { values: grouped(items, rows), children: rows, childType: 'PositionHistory' };
};

export const originalityRelationsOfItem = { originality: originalityOf, positionHistory };

/** Computed for an item and never asked for by an id of its own. */
export const positionHistoryReads: TypeReads = {
  typeName: 'PositionHistory',
  byIds: () => Promise.resolve([]),
  relations: {
    fittings: async (context, places) => {
      const idsOf = (row: Row): string[] => row['fittingIds'] as string[];
      const children =
        (await context.reads.get('Fitting')?.byIds(context, places.flatMap(idsOf))) ?? [];
      const byId = new Map(children.map((row) => [row.id, row]));
      const values = places.map((row) => idsOf(row).flatMap((id) => byId.get(id) ?? []));
      return { values, children, childType: 'Fitting' };
    },
  },
};
