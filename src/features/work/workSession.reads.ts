import { childPages } from '../../api/kit/childPages.js';
import { list, one } from '../../api/kit/relations.js';
import { selectColumns } from '../../api/kit/selectColumns.js';
import { spareColumns } from '../../api/kit/spareColumns.js';
import { tableReads } from '../../api/kit/tableReads.js';
import type { Relation } from '../../api/kit/typeReads.js';
import { netSeconds } from './netSeconds.reads.js';
import { hazardRelationsOfSession } from './sessionHazard.reads.js';
import { earlierVersions } from './sessionVersions.reads.js';
import { areOverlapsComplete, sessionOverlaps } from './sessionOverlaps.reads.js';

const names = [
  'id',
  'version',
  'personId',
  'itemId',
  'taskId',
  'startedAt',
  'endedAt',
  'zone',
  'note',
  'recordedAt',
  'changedAt',
];
const overlapFields = ['overlaps', 'areOverlapsComplete'];
const columns = spareColumns('work_session', names, {
  version: [],
  personId: ['person', ...overlapFields],
  itemId: ['item', ...overlapFields],
  taskId: ['task', ...overlapFields],
  zone: ['endQuestion', ...overlapFields],
  note: [],
  recordedAt: [],
  changedAt: [],
});
const breakColumns = selectColumns('work_break', ['id', 'startedAt', 'endedAt']);

export const workSessionReads = tableReads('WorkSession', 'work_session', columns, {
  person: one('Party', 'personId'),
  item: one('Item', 'itemId'),
  task: one('Task', 'taskId'),
  breaks: list('WorkBreak', {
    table: 'work_break',
    columns: breakColumns,
    parentColumn: 'session_id',
    orderBy: 'work_break.started_at, work_break.id',
  }),
  netSeconds,
  earlierVersions,
  overlaps: sessionOverlaps,
  areOverlapsComplete,
  ...hazardRelationsOfSession,
});

export const workBreakReads = tableReads('WorkBreak', 'work_break', breakColumns);

const sessionsBy = (parentColumn: string): Relation =>
  childPages('WorkSession', {
    table: 'work_session',
    columns,
    parentColumn,
    sortColumn: 'started_at',
    sortName: 'startedAt',
    direction: 'DESC',
  });

/** What work sessions add to an item and to a task. */
export const sessionRelationsOfItem: Record<string, Relation> = { sessions: sessionsBy('item_id') };
export const sessionRelationsOfTask: Record<string, Relation> = { sessions: sessionsBy('task_id') };
