import { grouped } from '../../api/kit/relations.js';
import type { Relation, Row, TypeReads } from '../../api/kit/typeReads.js';
import { listParameter } from '../../db/dialect.js';
import { groupedBy } from '../../db/groupedBy.js';
import { fitOutCompleteness } from '../../domain/completeness/fitOutCompleteness.js';
import { originality, type PositionOrigin } from '../../domain/originality/originality.js';
import { readCompletenessFacts } from '../inspections/completenessFacts.reads.js';
import type { ComponentOrigin } from '../parts/componentOrigin.js';

interface OriginRow {
  componentId: string;
  origin: ComponentOrigin;
  /** The item in which it is first known to have sat. */
  firstItemId: string;
}

/** An original part of another set is a replacement in this one. */
function originIn(itemId: string, known: OriginRow | undefined): PositionOrigin {
  if (!known || known.origin === 'UNKNOWN') return 'UNKNOWN';
  return known.origin === 'ORIGINAL' && known.firstItemId === itemId ? 'ORIGINAL' : 'REPLACED';
}

const originalityOf: Relation = async ({ database: { reader }, nowMs }, items, args) => {
  const asOfMs = args['asOf'] instanceof Date ? args['asOf'].getTime() : nowMs;
  const ids = items.map(({ id }) => id);
  const facts = await readCompletenessFacts(reader, ids);
  const origins = await reader.rows<OriginRow>(
    `SELECT component.id AS "componentId", component.origin AS "origin",
       (SELECT first_fitting.item_id FROM fitting first_fitting
        WHERE first_fitting.component_id = component.id
        ORDER BY first_fitting.fitted_at, first_fitting.id LIMIT 1) AS "firstItemId"
     FROM component WHERE component.id IN
       (SELECT fitting.component_id FROM fitting WHERE ${reader.dialect.isAnyOf('fitting.item_id')})`,
    [listParameter(ids)],
  );
  const weights = await reader.rows<{ positionId: string; weight: number | null }>(
    `SELECT fit_out_position.id AS "positionId", fit_out_position.weight AS "weight"
     FROM fit_out_position WHERE fit_out_position.model_id IN
       (SELECT item.model_id FROM item WHERE ${reader.dialect.isAnyOf('item.id')})`,
    [listParameter(ids)],
  );
  const originOf = new Map(origins.map((row) => [row.componentId, row]));
  const weightOf = new Map(weights.map(({ positionId, weight }) => [positionId, weight ?? 1]));
  const values = ids.map((itemId) => {
    const own = facts.get(itemId) ?? { fitOut: [], checks: [], fittings: [] };
    const { positions } = fitOutCompleteness(own.fitOut, own.checks, own.fittings, asOfMs);
    const weighed = positions.map(({ state, componentId }, index) => ({
      origin: ((): PositionOrigin => {
        if (state === 'MISSING') return 'EMPTY';
        if (state === 'WRONG') return 'REPLACED';
        return componentId === null ? 'UNKNOWN' : originIn(itemId, originOf.get(componentId));
      })(),
      weight: weightOf.get(own.fitOut[index]?.positionId ?? '') ?? 1,
    }));
    return {
      byPosition: originality(weighed.map(({ origin }) => ({ origin, weight: 1 }))),
      byWeight: originality(weighed),
      basis: {
        method:
          'Positions of the fit-out that hold the part the set was made with, divided by all positions; by weight, the weights of these. What is unknown is left out of the lower figure and counted into the upper. A part that first sat in another set is a replacement.',
        counted: [
          { what: 'positions of the fit-out', count: positions.length },
          { what: 'fittings recorded', count: own.fittings.length },
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
