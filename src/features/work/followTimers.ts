import type { Database } from '../../db/database.js';
import { latestPosition } from '../feed/changeEvents.reads.js';
import { followChanges, type FeedStep } from '../feed/followChanges.js';

const timerTables = new Set(['work_session', 'work_break']);

/** A step at once, then one for each act that changed a session or a break. */
export function followTimers(database: Database): AsyncIterableIterator<FeedStep> {
  let steps: AsyncIterableIterator<FeedStep> | null = null;
  let isEnded = false;
  return {
    next: async () => {
      if (isEnded) return { done: true, value: undefined };
      if (!steps) {
        const position = await latestPosition(database.reader);
        steps = followChanges(database, position);
        return { done: false, value: { position, event: null } };
      }
      for (;;) {
        const step = await steps.next();
        if (step.done === true || bearsOnTimers(step.value)) return step;
      }
    },
    return: async () => {
      isEnded = true;
      await steps?.return?.();
      return { done: true, value: undefined };
    },
    [Symbol.asyncIterator]() {
      return this;
    },
  };
}

const bearsOnTimers = ({ event }: FeedStep): boolean =>
  event?.records?.some(({ table }) => timerTables.has(table)) ?? true;
