import { stringify } from 'csv-stringify/sync';
import { neutralCell } from '../replacements/neutralCell.js';
import type { InsuredItem } from './insurance.type.js';

const columns = [
  'inventory number',
  'what',
  'serial number',
  'value',
  'currency',
  'basis',
  'condition',
  'valued on',
  'source',
  'picture',
];

/** A schedule as CSV (RFC 4180); no cell is one that a spreadsheet would take for a formula. */
export const scheduleCsv = (items: readonly InsuredItem[]): string =>
  stringify(
    [
      columns,
      ...items.map((item) =>
        [
          item.inventoryNumber,
          item.what,
          item.serialNumber,
          item.value?.amount,
          item.value?.currency,
          item.valueBasis,
          item.standard,
          item.valuedOn,
          item.source,
          item.picturePath,
        ].map((cell) => neutralCell(cell ?? '')),
      ),
    ],
    { record_delimiter: 'windows' },
  );
