import { childPages } from '../../api/kit/childPages.js';
import { selectColumns } from '../../api/kit/selectColumns.js';
import { tableReads } from '../../api/kit/tableReads.js';
import type { Relation } from '../../api/kit/typeReads.js';

const columns = selectColumns('dated_serial', [
  'id',
  'version',
  'serialNumber',
  'dateEdtf',
  'earliestOn',
  'latestOn',
  'source',
  'withdrawnAt',
]);

export const datedSerialReads = tableReads('DatedSerial', 'dated_serial', columns);

export const datedSerialRelationsOfModel: Record<string, Relation> = {
  datedSerials: childPages('DatedSerial', {
    table: 'dated_serial',
    columns,
    parentColumn: 'model_id',
    sortColumn: 'serial_number',
    sortName: 'serialNumber',
    direction: 'ASC',
  }),
};
