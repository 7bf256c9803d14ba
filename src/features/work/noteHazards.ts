import { insertRows } from '../../db/insertRow.js';
import { queryInWork } from '../../db/queryInWork.js';
import type { UnitOfWork } from '../../db/unitOfWork.js';
import { SessionHazardEntity } from './sessionHazard.entity.js';
import type { WorkSessionEntity } from './workSession.entity.js';

/** Writes down which hazards stood when work began, and whether the person was shown them. */
export async function noteHazards(
  work: UnitOfWork,
  { id: sessionId, itemId }: WorkSessionEntity,
  isShown: boolean,
): Promise<void> {
  const standing = await queryInWork<{ id: string }>(
    work,
    'SELECT id AS "id" FROM hazard WHERE item_id = ? AND cleared_at IS NULL ORDER BY raised_at, id',
    [itemId],
  );
  const noted = standing.map(({ id }) => ({ sessionId, hazardId: id, isShown }));
  if (noted.length > 0) await insertRows(work, SessionHazardEntity, noted);
}
