import type { Checklist } from '../../db/checklist.js';
import { queryInWork } from '../../db/queryInWork.js';
import type { UnitOfWork } from '../../db/unitOfWork.js';

interface Subjects {
  componentId?: string | null | undefined;
  taskId?: string | null | undefined;
  findingId?: string | null | undefined;
  treatedById?: string | null | undefined;
}

/** What a treatment names is there, and belongs to the item that was treated. */
export async function checkSubjects(
  work: UnitOfWork,
  check: Checklist,
  itemId: string,
  { componentId = null, taskId = null, findingId = null, treatedById = null }: Subjects,
): Promise<void> {
  await check.exists('component', componentId, ['componentId']);
  await check.exists('task', taskId, ['taskId']);
  await check.exists('finding', findingId, ['findingId']);
  await check.exists('party', treatedById, ['treatedById']);
  const elsewhere = async (sql: string, id: string | null): Promise<boolean> =>
    id !== null && (await queryInWork(work, sql, [id, itemId])).length > 0;
  const otherComponent = await elsewhere(
    `SELECT 1 AS "one" FROM fitting WHERE component_id = ?
     AND NOT EXISTS (SELECT 1 FROM fitting AS own
       WHERE own.component_id = fitting.component_id AND own.item_id = ?)`,
    componentId,
  );
  const otherTask = await elsewhere(
    `SELECT 1 AS "one" FROM task JOIN project ON project.id = task.project_id
     WHERE task.id = ? AND project.item_id <> ?`,
    taskId,
  );
  const otherFinding = await elsewhere(
    'SELECT 1 AS "one" FROM finding WHERE id = ? AND item_id <> ?',
    findingId,
  );
  check.that(!otherComponent, 'This component has never sat in this item.', ['componentId']);
  check.that(!otherTask, 'This task belongs to a project of another item.', ['taskId']);
  check.that(!otherFinding, 'This finding was made on another item.', ['findingId']);
}
