import { queryInWork } from '../../db/queryInWork.js';
import { Refusal } from '../../db/refusal.js';
import type { UnitOfWork } from '../../db/unitOfWork.js';

/** A place cannot be inside itself, however many rooms away. */
export async function refuseCircle(
  work: UnitOfWork,
  placeId: string,
  withinId: string,
): Promise<void> {
  const above = await queryInWork<{ id: string; name: string }>(
    work,
    `WITH RECURSIVE above (id, name, within_id) AS (
       SELECT id, name, within_id FROM place WHERE id = ?
       UNION SELECT place.id, place.name, place.within_id
       FROM place JOIN above ON place.id = above.within_id
     ) SELECT id AS "id", name AS "name" FROM above`,
    [withinId],
  );
  const position = above.findIndex((place) => place.id === placeId);
  if (position < 0) return;
  const names = above.slice(0, position + 1).map((place) => place.name);
  throw Refusal.conflict(
    `That would put the place inside itself: ${[names.at(-1), ...names].join(' in ')}.`,
    ['withinId'],
  );
}
