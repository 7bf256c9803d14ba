import { queryInWork } from './queryInWork.js';
import type { UnitOfWork } from './unitOfWork.js';

/**
 * Until this unit of work ends, no other one passes the same name: for rules over several rows,
 * which no unique index holds. What is read afterwards is what the one before has committed.
 * Nothing to do on SQLite, where units of work never overlap.
 */
export async function oneAtATime(work: UnitOfWork, name: string): Promise<void> {
  if (work.engine === 'sqlite') return;
  await queryInWork(work, `SELECT pg_advisory_xact_lock(hashtextextended(?, 0))`, [name]);
}
