import { datedSerialRelationsOfModel } from '../provenance/datedSerial.reads.js';
import { childPages } from '../../api/kit/childPages.js';
import { list, one } from '../../api/kit/relations.js';
import { selectColumns } from '../../api/kit/selectColumns.js';
import { spareColumns } from '../../api/kit/spareColumns.js';
import { tableReads } from '../../api/kit/tableReads.js';
import { columnsOfItem } from '../items/itemColumns.js';
import { priceRelationsOfModel } from '../prices/price.reads.js';
import { worthRelationsOfModel } from '../worth/worth.reads.js';
import { limitsOf } from '../readings/limit.reads.js';
import { sweepTemplatesOfModel } from '../sweeps/sweepTemplate.reads.js';

const names = [
  'id',
  'version',
  'itemKind',
  'maker',
  'designation',
  'description',
  'firstYearMade',
  'lastYearMade',
  'note',
  'retiredAt',
];
const columns = spareColumns('model', names, {
  version: [],
  itemKind: [],
  description: [],
  firstYearMade: [],
  lastYearMade: [],
  note: [],
  retiredAt: [],
});
const positionColumns = selectColumns('fit_out_position', [
  'id',
  'version',
  'modelId',
  'designator',
  'zone',
  'partTypeId',
  'isRequired',
  'weight',
  'ordinal',
  'note',
]);

export const modelReads = tableReads('Model', 'model', columns, {
  capabilities: list('ModelCapability', {
    table: 'model_capability',
    columns: selectColumns('model_capability', ['id', 'band', 'mode', 'outputMilliwatts']),
    parentColumn: 'model_id',
    orderBy: 'model_capability.band, model_capability.mode',
  }),
  roles: list('ModelRole', {
    table: 'model_role',
    columns: selectColumns('model_role', ['id', 'role', 'isRequired']),
    parentColumn: 'model_id',
    orderBy: 'model_role.role',
  }),
  fitOut: childPages('FitOutPosition', {
    table: 'fit_out_position',
    columns: positionColumns,
    parentColumn: 'model_id',
    sortColumn: 'ordinal',
    sortName: 'ordinal',
    sortKind: 'count',
    direction: 'ASC',
  }),
  limits: limitsOf('model_id'),
  ...priceRelationsOfModel,
  ...worthRelationsOfModel,
  ...datedSerialRelationsOfModel,
  ...sweepTemplatesOfModel,
  items: childPages('Item', {
    table: 'item',
    columns: columnsOfItem,
    parentColumn: 'model_id',
    sortColumn: 'inventory_number',
    sortName: 'inventoryNumber',
    direction: 'ASC',
    where: 'item.retired_at IS NULL',
  }),
});

export const fitOutPositionReads = tableReads(
  'FitOutPosition',
  'fit_out_position',
  positionColumns,
  { model: one('Model', 'modelId'), partType: one('PartType', 'partTypeId') },
);
