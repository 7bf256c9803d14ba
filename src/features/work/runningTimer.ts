import { IsNull } from 'typeorm';
import { Refusal } from '../../db/refusal.js';
import type { UnitOfWork } from '../../db/unitOfWork.js';
import type { PartyEntity } from '../parties/party.entity.js';
import { WorkSessionEntity } from './workSession.entity.js';

/** @throws Refusal CONFLICT when no timer of the person runs. */
export async function runningTimer(
  work: UnitOfWork,
  person: PartyEntity,
): Promise<WorkSessionEntity> {
  const running = await work.manager.findOneBy(WorkSessionEntity, {
    personId: person.id,
    endedAt: IsNull(),
  });
  if (running) return running;
  throw Refusal.conflict(`No timer of ${person.name} is running. Record the session instead.`, [
    'personId',
  ]);
}
