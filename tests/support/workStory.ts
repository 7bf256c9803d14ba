import type { WorkSession } from '../../src/domain/hours/workSession.js';

export const MINUTE_MS = 60_000;
export const HOUR_MS = 3_600_000;

let sessionCount = 0;

/** A session that shows only what matters to the story. */
export function workSession(
  told: Partial<WorkSession> & Pick<WorkSession, 'startedAtMs'>,
): WorkSession {
  sessionCount += 1;
  return {
    id: `session-${sessionCount}`,
    personId: 'collector',
    itemId: 'rig',
    taskId: null,
    taskKind: 'CLEANING',
    endedAtMs: null,
    zone: 'UTC',
    breaks: [],
    ...told,
  };
}
