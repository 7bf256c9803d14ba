import { selectColumns } from '../../api/kit/selectColumns.js';
import { tableReads } from '../../api/kit/tableReads.js';

const columns = selectColumns('spending_ceiling', [
  'id',
  'version',
  'period',
  'amountMinorUnits',
  'currency',
]);

export const spendingCeilingReads = tableReads('SpendingCeiling', 'spending_ceiling', columns);
