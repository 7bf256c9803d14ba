import type { UnitOfWork } from '../db/unitOfWork.js';
import { refreshItemText } from './search/refreshItemText.js';
import { refreshStandings } from './standing/refreshStandings.js';

/**
 * What is computed from the records that a unit of work wrote, in its transaction.
 * @returns the items whose standing was computed anew
 */
export async function refreshComputed(work: UnitOfWork): ReturnType<typeof refreshStandings> {
  await refreshItemText(work);
  return refreshStandings(work);
}
