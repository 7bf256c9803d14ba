import { selectColumns } from '../../api/kit/selectColumns.js';
import { tableReads } from '../../api/kit/tableReads.js';

export const partyReads = tableReads(
  'Party',
  'party',
  selectColumns('party', ['id', 'version', 'kind', 'name', 'contact', 'note', 'retiredAt']),
);
