import { selectColumns } from '../../api/kit/selectColumns.js';
import { tableReads } from '../../api/kit/tableReads.js';

const columns = selectColumns('price_index', [
  'id',
  'version',
  'name',
  'currency',
  'source',
  'struckAt',
]);

export const priceIndexReads = tableReads('PriceIndex', 'price_index', columns);
