import { childPages } from '../../api/kit/childPages.js';
import { list, one } from '../../api/kit/relations.js';
import { selectColumns } from '../../api/kit/selectColumns.js';
import { tableReads } from '../../api/kit/tableReads.js';
import type { Relation } from '../../api/kit/typeReads.js';
import { treatmentRelationsOfFinding } from '../treatments/treatment.reads.js';
import { hazardRelationsOfFinding } from '../hazards/hazard.reads.js';

const columns = selectColumns('finding', [
  'id',
  'version',
  'itemId',
  'inspectionId',
  'zone',
  'severity',
  'note',
  'seenAt',
  'status',
  'settledAt',
  'settledNote',
]);

export const findingReads = tableReads('Finding', 'finding', columns, {
  item: one('Item', 'itemId'),
  inspection: one('Inspection', 'inspectionId'),
  ...hazardRelationsOfFinding,
  ...treatmentRelationsOfFinding,
});

const latestFirst: Relation = (context, parents, args, asked) => {
  const status = args['status'];
  const pages = childPages('Finding', {
    table: 'finding',
    columns,
    parentColumn: 'item_id',
    sortColumn: 'seen_at',
    sortName: 'seenAt',
    direction: 'DESC',
    ...(typeof status === 'string' && {
      where: 'finding.status = ?',
      whereParameters: [status],
    }),
  });
  return pages(context, parents, args, asked);
};

export const findingRelationsOfItem = { findings: latestFirst };

export const findingRelationsOfInspection = {
  findings: list('Finding', {
    table: 'finding',
    columns,
    parentColumn: 'inspection_id',
    orderBy: 'finding.id',
  }),
};
