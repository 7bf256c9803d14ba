import type { ApiContext } from '../../api/kit/apiContext.js';
import { listParameter } from '../../db/dialect.js';
import type { ReportPeriod } from './reportPeriod.js';

export interface ReportedPhotograph {
  id: string;
  itemId: string;
  inventoryNumber: string;
  /** Title of the task that it is shown with; null for another record of the item. */
  task: string | null;
  digest: string;
  role: string;
  caption: string | null;
  /** By the camera's clock; null where it says nothing. */
  takenAt: string | null;
  recordedAt: string;
  beforeId: string | null;
}

/** Records of the work on an item; its past, its lots and loans are nobody's who follows the work. */
const subjects = `WITH subject AS (
  SELECT id AS id, id AS item_id, NULL AS task FROM item
  UNION ALL SELECT task.id, project.item_id, task.title FROM task
    JOIN project ON project.id = task.project_id
  UNION ALL SELECT id, item_id, NULL FROM project
  UNION ALL SELECT id, item_id, NULL FROM finding
  UNION ALL SELECT id, item_id, NULL FROM hazard
  UNION ALL SELECT id, item_id, NULL FROM inspection
  UNION ALL SELECT id, item_id, NULL FROM treatment
  UNION ALL SELECT id, item_id, NULL FROM work_session
  UNION ALL SELECT id, item_id, NULL FROM bring_up
  UNION ALL SELECT component_id, item_id, NULL FROM fitting WHERE NOT EXISTS (
    SELECT 1 FROM fitting AS later WHERE later.component_id = fitting.component_id
      AND later.fitted_at > fitting.fitted_at)
)`;

const photograph = `SELECT attachment.id AS "id", item.id AS "itemId",
    item.inventory_number AS "inventoryNumber", subject.task AS "task",
    stored_file.digest AS "digest", attachment.role AS "role", attachment.caption AS "caption",
    stored_file.taken_at AS "takenAt", attachment.recorded_at AS "recordedAt",
    attachment.before_id AS "beforeId"
  FROM attachment JOIN stored_file ON stored_file.id = attachment.file_id
  JOIN subject ON subject.id = attachment.subject_id JOIN item ON item.id = subject.item_id
  WHERE attachment.detached_at IS NULL AND stored_file.width_pixels IS NOT NULL
    AND attachment.role NOT IN ('MARKING', 'DOCUMENT')`;

/**
 * Photographs taken in the period, or attached in it where the camera gave no time, in the order of
 * the day; after each what it is to be seen beside, of whatever day. Plates and papers are left out:
 * they show serial numbers, people and prices.
 */
export async function readPhotographs(
  { database: { reader } }: ApiContext,
  { fromDay, toDay, from, until }: ReportPeriod,
  itemId: string | null,
): Promise<ReportedPhotograph[]> {
  const taken = await reader.rows<ReportedPhotograph>(
    `${subjects} ${photograph} AND (
       (stored_file.taken_at IS NOT NULL AND SUBSTR(stored_file.taken_at, 1, 10) BETWEEN ? AND ?)
       OR (stored_file.taken_at IS NULL AND attachment.recorded_at >= ?
         AND attachment.recorded_at < ?))
       ${itemId === null ? '' : 'AND item.id = ?'}
     ORDER BY COALESCE(stored_file.taken_at, attachment.recorded_at), attachment.id`,
    [fromDay, toDay, from, until, ...(itemId === null ? [] : [itemId])],
  );
  const known = new Set(taken.map(({ id }) => id));
  const missing = taken.flatMap(({ beforeId }) =>
    beforeId === null || known.has(beforeId) ? [] : [beforeId],
  );
  if (missing.length === 0) return taken;
  const besides = await reader.rows<ReportedPhotograph>(
    `${subjects} ${photograph} AND ${reader.dialect.isAnyOf('attachment.id')}`,
    [listParameter([...new Set(missing)])],
  );
  return [...taken, ...besides];
}
