import type { Act } from '../db/database.js';
import type { Surroundings } from './surroundings.js';

/** Who does what, when it is done from the command line. */
export const actOfCommand = (around: Surroundings, action: string): Act => ({
  action,
  actorId: null,
  now: new Date(around.nowMs()).toISOString(),
});
