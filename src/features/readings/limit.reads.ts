import { list } from '../../api/kit/relations.js';
import { selectColumns } from '../../api/kit/selectColumns.js';
import { tableReads } from '../../api/kit/tableReads.js';
import type { Relation } from '../../api/kit/typeReads.js';

const columns = selectColumns('reading_limit', [
  'id',
  'version',
  'quantity',
  'tier',
  'lower',
  'upper',
  'unit',
  'source',
]);

export const limitReads = tableReads('Limit', 'reading_limit', columns);

/** Limits below a part type or a model, by quantity. */
export const limitsOf = (parentColumn: 'part_type_id' | 'model_id'): Relation =>
  list('Limit', {
    table: 'reading_limit',
    columns,
    parentColumn,
    orderBy: 'reading_limit.quantity, reading_limit.id',
  });
