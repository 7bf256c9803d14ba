import { selectColumns } from '../../api/kit/selectColumns.js';
import { tableReads } from '../../api/kit/tableReads.js';

const columns = selectColumns('exchange_rate', [
  'id',
  'version',
  'fromCurrency',
  'toCurrency',
  'ratedOn',
  'rate',
  'source',
  'struckAt',
]);

export const exchangeRateReads = tableReads('ExchangeRate', 'exchange_rate', columns);
