import { childPages } from '../../api/kit/childPages.js';
import { one } from '../../api/kit/relations.js';
import { selectColumns } from '../../api/kit/selectColumns.js';
import { tableReads } from '../../api/kit/tableReads.js';
import { evidenceRelationsOf } from './evidence.reads.js';
import { partiesOfEvent } from './eventParty.reads.js';
import type { Relation } from '../../api/kit/typeReads.js';

const columns = selectColumns('provenance_event', [
  'id',
  'version',
  'itemId',
  'kind',
  'dateEdtf',
  'earliestOn',
  'latestOn',
  'fromPartyId',
  'toPartyId',
  'placeName',
  'standing',
  'evidence',
  'note',
]);

export const provenanceEventReads = tableReads('ProvenanceEvent', 'provenance_event', columns, {
  item: one('Item', 'itemId'),
  fromParty: one('Party', 'fromPartyId'),
  toParty: one('Party', 'toPartyId'),
  parties: partiesOfEvent,
  ...evidenceRelationsOf('event_id'),
});

/** Undated events come last: no day of the calendar sorts after this one. */
const sortExpression =
  "COALESCE(provenance_event.earliest_on, provenance_event.latest_on, '9999-99-99')";

export const eventsByDate: Relation = childPages('ProvenanceEvent', {
  table: 'provenance_event',
  columns: `${columns}, ${sortExpression} AS "sortKey"`,
  parentColumn: 'item_id',
  sortColumn: 'earliest_on',
  sortExpression,
  sortName: 'sortKey',
  direction: 'ASC',
});
