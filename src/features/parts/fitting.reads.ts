import { childPages } from '../../api/kit/childPages.js';
import { grouped, list, one } from '../../api/kit/relations.js';
import { spareColumns } from '../../api/kit/spareColumns.js';
import { tableReads } from '../../api/kit/tableReads.js';
import type { Relation, Row } from '../../api/kit/typeReads.js';
import { listParameter } from '../../db/dialect.js';
import { stockRelationsOfFitting } from '../stock/stockDraw.reads.js';

const names = [
  'id',
  'version',
  'componentId',
  'itemId',
  'designator',
  'fittedAt',
  'removedAt',
  'disposition',
  'note',
];
const columns = spareColumns('fitting', names, {
  version: [],
  componentId: ['component'],
  itemId: ['item'],
  designator: [],
  fittedAt: [],
  removedAt: [],
  disposition: [],
  note: [],
});

/** The place in the model's fit-out, where the model has it. */
const position: Relation = async (context, fittings, args, asked) => {
  const { reader } = context.database;
  const found = await reader.rows<{ id: string; parentId: string }>(
    `SELECT fit_out_position.id AS "id", fitting.id AS "parentId"
     FROM fitting JOIN item ON item.id = fitting.item_id
     JOIN fit_out_position ON fit_out_position.model_id = item.model_id
       AND fit_out_position.designator = fitting.designator
     WHERE ${reader.dialect.isAnyOf('fitting.id')}`,
    [listParameter(fittings.map((fitting) => fitting.id))],
  );
  const withPositions = grouped(fittings, found).map(([pair], index) => ({
    id: fittings[index]?.id ?? '',
    positionId: pair?.id ?? null,
  }));
  return one('FitOutPosition', 'positionId')(context, withPositions, args, asked);
};

/** Where the part was fitted next. */
const next: Relation = async ({ database: { reader } }, fittings, _args, asked) => {
  const later = await reader.rows<Row>(
    `SELECT ${columns(asked)}, earlier.id AS "parentId" FROM fitting earlier
     JOIN fitting ON fitting.component_id = earlier.component_id
       AND (fitting.fitted_at, fitting.id) > (earlier.fitted_at, earlier.id)
     WHERE ${reader.dialect.isAnyOf('earlier.id')} ORDER BY fitting.fitted_at, fitting.id`,
    [listParameter(fittings.map(({ id }) => id))],
  );
  const values = grouped(fittings, later).map(([first]) => first ?? null);
  return { values, children: later, childType: 'Fitting' };
};

export const fittingReads = tableReads('Fitting', 'fitting', columns, {
  item: one('Item', 'itemId'),
  component: one('Component', 'componentId'),
  position,
  next,
  ...stockRelationsOfFitting,
});

const designatorKey = 'natural_key(fitting.designator)';

/** What sat in the item at an instant: fitted by then, and not yet removed. */
const components: Relation = (context, parents, args, ...rest) => {
  const given = args['asOf'];
  const asOf = new Date(given instanceof Date ? given : context.nowMs).toISOString();
  const pages = childPages('Fitting', {
    table: 'fitting',
    columns,
    parentColumn: 'item_id',
    sortColumn: 'designator',
    sortExpression: designatorKey,
    sortName: 'designatorKey',
    direction: 'ASC',
    where: 'fitting.fitted_at <= ? AND (fitting.removed_at IS NULL OR fitting.removed_at > ?)',
    whereParameters: [asOf, asOf],
  });
  return pages(context, parents, args, ...rest);
};

export const fittingRelationsOfItem = { components };

export const fittingRelationsOfComponent = {
  fittings: list('Fitting', {
    table: 'fitting',
    columns,
    parentColumn: 'component_id',
    orderBy: 'fitting.fitted_at, fitting.id',
  }),
};
