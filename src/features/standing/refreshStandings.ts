import { listParameter } from '../../db/dialect.js';
import { rowSourceInWork } from '../../db/rowSource.js';
import type { UnitOfWork } from '../../db/unitOfWork.js';
import { computeStandings } from './computeStandings.js';
import { touchedItems } from './touchedItems.js';
import { writeStandings } from './writeStandings.js';

/** Bounds what is in memory at once when a whole list is loaded. */
const itemsAtOnce = 200;

/**
 * Computes anew how the items stand that a unit of work bears on, in its own transaction.
 * @returns their ids
 */
export async function refreshStandings(work: UnitOfWork): Promise<string[]> {
  const source = rowSourceInWork(work);
  const touched = await touchedItems(source.rows, source.dialect, work.writes);
  await standAnew(work, touched);
  return touched;
}

/** Computes the standing of some items from their records. */
export async function standAnew(work: UnitOfWork, itemIds: readonly string[]): Promise<void> {
  const source = rowSourceInWork(work);
  for (let start = 0; start < itemIds.length; start += itemsAtOnce) {
    const some = itemIds.slice(start, start + itemsAtOnce);
    await holdItems(work, some);
    await writeStandings(work, await computeStandings(source, some, Date.parse(work.now)));
  }
}

/**
 * On PostgreSQL two transactions may bear on one item at the same time: the second waits here, and
 * then sees what the first has committed. SQLite has one writer.
 */
async function holdItems(work: UnitOfWork, itemIds: readonly string[]): Promise<void> {
  if (work.engine === 'sqlite') return;
  const { rows, dialect } = rowSourceInWork(work);
  await rows(`SELECT id FROM item WHERE ${dialect.isAnyOf('id')} ORDER BY id FOR UPDATE`, [
    listParameter(itemIds),
  ]);
}
