import { one } from '../../api/kit/relations.js';
import { selectColumns } from '../../api/kit/selectColumns.js';
import type { ApiContext } from '../../api/kit/apiContext.js';
import type { Relation, Row, TypeReads } from '../../api/kit/typeReads.js';
import { listParameter } from '../../db/dialect.js';
import { quantileOfSorted } from '../../domain/estimates/quantileOfSorted.js';
import { shippedTemplates, type ShippedTemplate } from './shippedTemplates.js';
import { readTaskHistory, taskHistoryKey } from './taskHistory.reads.js';
import type { TemplateTask } from './templateTask.js';
import type { TemplateTaskType } from './taskTemplate.type.js';

const columns = selectColumns('task_template', [
  'id',
  'version',
  'title',
  'description',
  'itemKind',
  'sourceProjectId',
  'tasks',
  'retiredAt',
]);

const shippedRow = (template: ShippedTemplate): Row => ({
  ...template,
  version: null,
  isShipped: true,
  sourceProjectId: null,
  retiredAt: null,
});

const ownRow = (row: Row): Row => ({
  ...row,
  isShipped: false,
  tasks: JSON.parse(row['tasks'] as string) as TemplateTask[],
});

/** The collector's own, by title, then those that come with the program. */
export async function readTemplates(
  { database: { reader } }: ApiContext,
  withRetired: boolean,
): Promise<Row[]> {
  const own = await reader.rows<Row>(
    `SELECT ${columns} FROM task_template ${withRetired ? '' : 'WHERE retired_at IS NULL'}
     ORDER BY title, id`,
  );
  return [...own.map(ownRow), ...shippedTemplates.map(shippedRow)];
}

const hundredths = (hours: number): number => Math.round(hours * 100) / 100;

const tasks: Relation = async ({ database: { reader }, nowMs }, templates) => {
  const lists = templates.map((template) => template['tasks'] as TemplateTask[]);
  const history = await readTaskHistory(
    (sql, parameters) => reader.rows(sql, parameters),
    reader.dialect,
    lists.flat(),
    nowMs,
  );
  const values = lists.map((list) => list.map((task, position) => shown(task, position, history)));
  return { values, children: [], childType: null };
};

function shown(
  task: TemplateTask,
  position: number,
  history: ReadonlyMap<string, number[]>,
): TemplateTaskType {
  const worked = Float64Array.from(history.get(taskHistoryKey(task)) ?? []).sort();
  return {
    ...task,
    position,
    optimisticHours: task.optimisticMinutes / 60,
    likelyHours: task.likelyMinutes / 60,
    pessimisticHours: task.pessimisticMinutes / 60,
    history:
      worked.length === 0
        ? null
        : {
            tasks: worked.length,
            leastHours: hundredths(worked[0] ?? 0),
            medianHours: hundredths(quantileOfSorted(worked, 0.5)),
            mostHours: hundredths(worked.at(-1) ?? 0),
          },
  };
}

export const taskTemplateReads: TypeReads & { table: string } = {
  typeName: 'TaskTemplate',
  table: 'task_template',
  byIds: async ({ database: { reader } }, ids) => {
    const own = await reader.rows<Row>(
      `SELECT ${columns} FROM task_template WHERE ${reader.dialect.isAnyOf('id')}`,
      [listParameter(ids)],
    );
    const shipped = shippedTemplates.filter(({ id }) => ids.includes(id));
    return [...own.map(ownRow), ...shipped.map(shippedRow)];
  },
  relations: { tasks, sourceProject: one('Project', 'sourceProjectId') },
};
