import { checkedRecordId } from '../../api/kit/checkedRecordId.js';
import { itemTypes } from '../../api/kit/globalId.js';
import type { Checklist } from '../../db/checklist.js';
import type { UnitOfWork } from '../../db/unitOfWork.js';
import { ItemEntity } from '../items/item.entity.js';
import { ProjectEntity } from '../projects/project.entity.js';
import { TaskEntity } from '../tasks/task.entity.js';

interface Named {
  itemId?: string | null;
  taskId?: string | null;
}

export interface WorkedOn {
  item: ItemEntity;
  /** null for time on the item as a whole. */
  task: TaskEntity | null;
  project: ProjectEntity | null;
}

/**
 * The item and, where one is named, the task that time is given to; the task says the item.
 * @returns null when there is a problem, which then is in the checklist.
 */
export async function whatIsWorkedOn(
  work: UnitOfWork,
  check: Checklist,
  named: Named,
): Promise<WorkedOn | null> {
  const missing = (message: string, path: string[]) => {
    check.add({ code: 'NOT_FOUND', message, path });
    return null;
  };
  const itemId = named.itemId ? checkedRecordId(check, itemTypes, named.itemId, ['itemId']) : null;
  const taskId = named.taskId ? checkedRecordId(check, 'Task', named.taskId, ['taskId']) : null;
  if (!named.itemId && !named.taskId) {
    check.refuse('Name the task or the item that was worked on.', ['itemId']);
  }
  if (taskId === null && itemId === null) return null;
  const task = taskId === null ? null : await work.manager.findOneBy(TaskEntity, { id: taskId });
  if (taskId !== null && !task) return missing('There is no task with this id.', ['taskId']);
  const project =
    task && (await work.manager.findOneByOrFail(ProjectEntity, { id: task.projectId }));
  const item = await work.manager.findOneBy(ItemEntity, {
    id: project?.itemId ?? (itemId as string),
  });
  if (!item) return missing('There is no item with this id.', ['itemId']);
  if (itemId !== null && itemId !== item.id) {
    check.refuse('The task belongs to another item. Leave the item out, or name the right one.', [
      'itemId',
    ]);
  }
  return { item, task, project };
}
