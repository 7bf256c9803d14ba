import { list, one } from '../../api/kit/relations.js';
import { selectColumns } from '../../api/kit/selectColumns.js';
import { tableReads } from '../../api/kit/tableReads.js';

const columns = selectColumns('event_party', ['id', 'version', 'partyId', 'role', 'note']);

export const eventPartyReads = tableReads('EventParty', 'event_party', columns, {
  party: one('Party', 'partyId'),
});

export const partiesOfEvent = list('EventParty', {
  table: 'event_party',
  columns,
  parentColumn: 'event_id',
  orderBy: 'event_party.id',
});
