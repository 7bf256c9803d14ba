import { list, one } from '../../api/kit/relations.js';
import { spareColumns } from '../../api/kit/spareColumns.js';
import { tableReads } from '../../api/kit/tableReads.js';
import type { Relation } from '../../api/kit/typeReads.js';

const names = [
  'id',
  'version',
  'accessoryId',
  'rigId',
  'role',
  'isExclusive',
  'startedAt',
  'endedAt',
  'note',
];
const columns = spareColumns('item_service', names, {
  version: [],
  isExclusive: [],
  startedAt: [],
  endedAt: [],
  note: [],
});

export const serviceReads = tableReads('Service', 'item_service', columns, {
  accessory: one('Accessory', 'accessoryId'),
  rig: one('Rig', 'rigId'),
});

const services = (parentColumn: string): Relation => {
  const all = { table: 'item_service', columns, parentColumn, orderBy: 'item_service.id' };
  const everySince = list('Service', all);
  const running = list('Service', { ...all, where: 'item_service.ended_at IS NULL' });
  return (context, parents, args, ...rest) =>
    (args['withEnded'] === true ? everySince : running)(context, parents, args, ...rest);
};

export const serviceRelationsOfItem = {
  serves: services('accessory_id'),
  servedBy: services('rig_id'),
};
