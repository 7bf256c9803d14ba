import { list, one } from '../../api/kit/relations.js';
import { selectColumns } from '../../api/kit/selectColumns.js';
import { tableReads } from '../../api/kit/tableReads.js';

const columns = selectColumns('session_hazard', [
  'id',
  'sessionId',
  'hazardId',
  'isShown',
  'recordedAt',
]);

export const sessionHazardReads = tableReads('SessionHazard', 'session_hazard', columns, {
  hazard: one('Hazard', 'hazardId'),
});

export const hazardRelationsOfSession = {
  hazardsAtStart: list('SessionHazard', {
    table: 'session_hazard',
    columns,
    parentColumn: 'session_id',
    orderBy: 'session_hazard.id',
  }),
};
