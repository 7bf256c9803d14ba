import { list, one } from '../../api/kit/relations.js';
import { selectColumns } from '../../api/kit/selectColumns.js';
import { tableReads } from '../../api/kit/tableReads.js';
import { claimsOf } from '../provenance/claim.reads.js';
import { linesOfLot, totalsOfLot } from './lotLine.reads.js';

const columns = selectColumns('acquisition', [
  'id',
  'version',
  'acquiredOn',
  'otherPartyId',
  'venue',
  'priceMinorUnits',
  'currency',
  'spreadMethod',
  'note',
  'recordedAt',
  'changedAt',
]);
const costColumns = selectColumns('extra_cost', [
  'id',
  'version',
  'description',
  'amountMinorUnits',
  'currency',
]);

export const acquisitionReads = tableReads('Acquisition', 'acquisition', columns, {
  otherParty: one('Party', 'otherPartyId'),
  extraCosts: list('ExtraCost', {
    table: 'extra_cost',
    columns: costColumns,
    parentColumn: 'acquisition_id',
    orderBy: 'extra_cost.id',
  }),
  lines: linesOfLot,
  totals: totalsOfLot,
  claims: claimsOf('acquisition_id'),
});

export const extraCostReads = tableReads('ExtraCost', 'extra_cost', costColumns);
