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

const byDate = {
  table: 'provenance_event',
  columns,
  parentColumn: 'item_id',
  sortColumn: 'earliest_on',
  sortExpression,
  sortName: 'sortKey',
  direction: 'ASC',
} as const;

/** Those that may have happened between two days, whatever the true dates are; or all. */
export const eventsByDate: Relation = (context, groups, args, asked, askedOfRows) => {
  const [from, to] = [args['from'], args['to']].map((day) =>
    typeof day === 'string' ? day : null,
  );
  if (!from && !to) {
    return childPages('ProvenanceEvent', byDate)(context, groups, args, asked, askedOfRows);
  }
  const range = {
    where: `(provenance_event.earliest_on IS NOT NULL OR provenance_event.latest_on IS NOT NULL)
      AND COALESCE(provenance_event.earliest_on, '0000') <= ?
      AND COALESCE(provenance_event.latest_on, '9999-12-31') >= ?`,
    whereParameters: [to ?? '9999-12-31', from ?? '0000'],
  };
  const pages = childPages('ProvenanceEvent', { ...byDate, ...range });
  return pages(context, groups, args, asked, askedOfRows);
};
