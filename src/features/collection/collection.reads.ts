import { selectColumns } from '../../api/kit/selectColumns.js';
import { tableReads } from '../../api/kit/tableReads.js';
import { collectionRelations } from './collectionRelations.js';

const columns = selectColumns('collection', [
  'id',
  'version',
  'name',
  'ownerId',
  'homeCurrency',
  'zone',
  'ituRegion',
  'licenceClass',
]);

export const collectionReads = tableReads('Collection', 'collection', columns, collectionRelations);
