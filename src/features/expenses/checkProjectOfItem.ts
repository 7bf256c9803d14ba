import type { Checklist } from '../../db/checklist.js';
import { queryInWork } from '../../db/queryInWork.js';
import type { UnitOfWork } from '../../db/unitOfWork.js';

/** Money is spent within a project of the same item, or within none. */
export async function checkProjectOfItem(
  work: UnitOfWork,
  check: Checklist,
  projectId: string | null,
  itemId: string,
): Promise<void> {
  if (projectId === null) return;
  const path = ['projectId'];
  const [project] = await queryInWork<{ itemId: string; title: string; number: string }>(
    work,
    `SELECT project.item_id AS "itemId", project.title AS "title", item.inventory_number AS "number"
     FROM project JOIN item ON item.id = project.item_id WHERE project.id = ?`,
    [projectId],
  );
  if (!project) {
    check.add({ code: 'NOT_FOUND', message: 'There is no project with this id.', path });
  } else if (project.itemId !== itemId) {
    const message =
      `The project “${project.title}” is on ${project.number}, and the money was spent on ` +
      'another item: give one of its own projects, or none.';
    check.add({ code: 'CONFLICT', message, path });
  }
}
