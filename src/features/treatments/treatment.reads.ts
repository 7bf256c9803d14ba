import { childPages } from '../../api/kit/childPages.js';
import { computedReads } from '../../api/kit/computedReads.js';
import { list, one } from '../../api/kit/relations.js';
import { selectColumns } from '../../api/kit/selectColumns.js';
import { tableReads } from '../../api/kit/tableReads.js';
import type { Relation } from '../../api/kit/typeReads.js';
import { meetings } from './meetings.reads.js';

const columns = selectColumns('treatment', [
  'id',
  'version',
  'itemId',
  'componentId',
  'taskId',
  'findingId',
  'zone',
  'surface',
  'material',
  'dwellMinutes',
  'passes',
  'isRinsed',
  'outcome',
  'result',
  'remains',
  'treatedAt',
  'treatedById',
  'overrideReason',
  'overriddenById',
]);
const agentColumns = selectColumns('treatment_agent', [
  'id',
  'kind',
  'name',
  'agentParts',
  'waterParts',
]);

export const treatmentReads = tableReads('Treatment', 'treatment', columns, {
  item: one('Item', 'itemId'),
  component: one('Component', 'componentId'),
  task: one('Task', 'taskId'),
  finding: one('Finding', 'findingId'),
  treatedBy: one('Party', 'treatedById'),
  overriddenBy: one('Party', 'overriddenById'),
  agents: list('TreatmentAgent', {
    table: 'treatment_agent',
    columns: agentColumns,
    parentColumn: 'treatment_id',
    orderBy: 'treatment_agent.ordinal, treatment_agent.id',
  }),
  meetings,
});

export const treatmentAgentReads = tableReads('TreatmentAgent', 'treatment_agent', agentColumns);

export const agentMeetingReads = computedReads('AgentMeeting', {
  earlier: one('Treatment', 'earlierId'),
});

const latestFirst = (parentColumn: string): Record<string, Relation> => ({
  treatments: childPages('Treatment', {
    table: 'treatment',
    columns,
    parentColumn,
    sortColumn: 'treated_at',
    sortName: 'treatedAt',
    direction: 'DESC',
  }),
});

export const treatmentRelationsOfItem = latestFirst('item_id');
export const treatmentRelationsOfComponent = latestFirst('component_id');
export const treatmentRelationsOfTask = latestFirst('task_id');
export const treatmentRelationsOfFinding = latestFirst('finding_id');
