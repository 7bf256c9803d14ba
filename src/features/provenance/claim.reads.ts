import { childPages } from '../../api/kit/childPages.js';
import { one } from '../../api/kit/relations.js';
import { selectColumns } from '../../api/kit/selectColumns.js';
import { tableReads } from '../../api/kit/tableReads.js';
import { evidenceRelationsOf } from './evidence.reads.js';
import type { Relation } from '../../api/kit/typeReads.js';

const columns = selectColumns('claim', [
  'id',
  'version',
  'itemId',
  'acquisitionId',
  'saidById',
  'saidOn',
  'statement',
  'recordedAt',
]);

export const claimReads = tableReads('Claim', 'claim', columns, {
  item: one('Item', 'itemId'),
  acquisition: one('Acquisition', 'acquisitionId'),
  saidBy: one('Party', 'saidById'),
  ...evidenceRelationsOf('claim_id'),
});

/** Claims in the order in which they were written down. */
export const claimsOf = (parentColumn: 'item_id' | 'acquisition_id'): Relation =>
  childPages('Claim', {
    table: 'claim',
    columns,
    parentColumn,
    sortColumn: 'recorded_at',
    sortName: 'recordedAt',
    direction: 'ASC',
  });
