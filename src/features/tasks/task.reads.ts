import { childPages } from '../../api/kit/childPages.js';
import { grouped, list, one } from '../../api/kit/relations.js';
import { selectColumns } from '../../api/kit/selectColumns.js';
import { spareColumns, type AskedOfRows } from '../../api/kit/spareColumns.js';
import { tableReads } from '../../api/kit/tableReads.js';
import type { Relation, Row } from '../../api/kit/typeReads.js';
import { listParameter } from '../../db/dialect.js';
import { stockRelationsOfTask } from '../stock/stockReservation.reads.js';
import { forecastRelationsOfTask } from '../forecast/taskRemaining.reads.js';
import { partRelationsOfTask } from './partsNeeded.reads.js';
import { treatmentRelationsOfTask } from '../treatments/treatment.reads.js';
import { evidence } from './taskEvidence.reads.js';
import { sessionRelationsOfTask } from '../work/workSession.reads.js';

const names = [
  'id',
  'version',
  'projectId',
  'ordinal',
  'title',
  'kind',
  'status',
  'optimisticMinutes',
  'likelyMinutes',
  'pessimisticMinutes',
  'estimateDistribution',
  'percentComplete',
  'percentEvidence',
  'percentEvidenceKind',
  'percentEvidenceReadingId',
  'percentEvidenceAttachmentId',
  'hazardKinds',
  'startedAt',
  'finishedAt',
  'note',
  'recordedAt',
  'changedAt',
];
const spared = spareColumns('task', names, {
  version: [],
  title: [],
  percentComplete: [],
  percentEvidence: ['evidence'],
  percentEvidenceKind: ['evidence'],
  percentEvidenceReadingId: ['evidence'],
  percentEvidenceAttachmentId: ['evidence'],
  hazardKinds: ['cautions'],
  startedAt: [],
  finishedAt: [],
  note: [],
  recordedAt: [],
  changedAt: [],
});
const columns = (asked: AskedOfRows): string =>
  asked === undefined || asked.has('rule')
    ? `${spared(asked)}, task.earning_rule AS "rule"`
    : spared(asked);
const stepColumns = selectColumns('task_step', ['id', 'title', 'weight', 'doneAt']);

/** Tasks at the other end of the links of these tasks. */
const linked =
  (from: 'task_id' | 'predecessor_id', to: 'task_id' | 'predecessor_id'): Relation =>
  async ({ database: { reader } }, parents, _args, _asked, askedOfRows) => {
    const children = await reader.rows<Row>(
      `SELECT ${columns(askedOfRows)}, task_predecessor.${from} AS "parentId"
       FROM task_predecessor JOIN task ON task.id = task_predecessor.${to}
       WHERE ${reader.dialect.isAnyOf(`task_predecessor.${from}`)} ORDER BY task.ordinal, task.id`,
      [listParameter(parents.map(({ id }) => id))],
    );
    return { values: grouped(parents, children), children, childType: 'Task' };
  };

/** The same rule as `readyTasks`, for any set of tasks in one statement. */
const isReady: Relation = async ({ database: { reader } }, parents) => {
  const held = await reader.rows<{ id: string }>(
    `SELECT DISTINCT task_predecessor.task_id AS "id"
     FROM task_predecessor JOIN task ON task.id = task_predecessor.predecessor_id
     WHERE task.status NOT IN ('DONE', 'DROPPED')
       AND ${reader.dialect.isAnyOf('task_predecessor.task_id')}`,
    [listParameter(parents.map(({ id }) => id))],
  );
  const heldUp = new Set(held.map(({ id }) => id));
  const values = parents.map(
    ({ id, status }) => status !== 'DONE' && status !== 'DROPPED' && !heldUp.has(id),
  );
  return { values, children: [], childType: null };
};

export const taskReads = tableReads('Task', 'task', columns, {
  project: one('Project', 'projectId'),
  steps: list('TaskStep', {
    table: 'task_step',
    columns: stepColumns,
    parentColumn: 'task_id',
    orderBy: 'task_step.ordinal, task_step.id',
  }),
  predecessors: linked('task_id', 'predecessor_id'),
  successors: linked('predecessor_id', 'task_id'),
  isReady,
  evidence,
  ...partRelationsOfTask,
  ...sessionRelationsOfTask,
  ...stockRelationsOfTask,
  ...treatmentRelationsOfTask,
  ...forecastRelationsOfTask,
});

export const taskStepReads = tableReads('TaskStep', 'task_step', stepColumns);

/** What tasks add to a project. */
export const taskRelationsOfProject: Record<string, Relation> = {
  tasks: childPages('Task', {
    table: 'task',
    columns,
    parentColumn: 'project_id',
    sortColumn: 'ordinal',
    sortName: 'ordinal',
    sortKind: 'count',
    direction: 'ASC',
  }),
};
