import { selectColumns } from '../../api/kit/selectColumns.js';
import { tableReads } from '../../api/kit/tableReads.js';
import type { RowSource } from '../../db/rowSource.js';

const columns = selectColumns('instrument_comparison', [
  'id',
  'version',
  'quantity',
  'fromInstrument',
  'toInstrument',
  'factor',
  'comparedOn',
  'note',
]);

export const instrumentComparisonReads = tableReads(
  'InstrumentComparison',
  'instrument_comparison',
  columns,
);

export interface KeptComparison {
  quantity: string;
  fromInstrument: string;
  toInstrument: string;
  factor: string;
}

/** All comparisons, the latest first. A workshop has few instruments. */
export const readComparisons = ({ rows }: RowSource): Promise<KeptComparison[]> =>
  rows<KeptComparison>(
    `SELECT quantity AS "quantity", from_instrument AS "fromInstrument",
       to_instrument AS "toInstrument", factor AS "factor"
     FROM instrument_comparison ORDER BY compared_on DESC, id DESC`,
    [],
  );
