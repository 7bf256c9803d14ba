import type { BlockerCode } from './blocker.js';

/** A task that is not done yet, of the item that is to be mended. */
export interface OpenTask {
  readonly taskId: string;
  /** What sort of work it is, as the estimates are compared by it. */
  readonly kind: string;
  /** What is expected to be left of it. */
  readonly expectedHours: number;
}

export interface MendingHours {
  readonly hours: number;
  /** TASKS: the sum of the open tasks named. DEFAULT: no task is planned for it. */
  readonly restsOn: 'TASKS' | 'DEFAULT';
  readonly taskIds: readonly string[];
}

const AT_THE_BENCH = ['REPAIR', 'WIRING', 'POWER', 'CAPACITORS', 'MECHANICAL', 'ALIGNMENT'];

/** Sorts of work that mend a blocker, and hours where none is planned: our own defaults, no source. */
const MENDED_BY: Readonly<Record<BlockerCode, { kinds: readonly string[]; hours: number }>> = {
  RETIRED: { kinds: [], hours: 0.25 },
  NOT_IN_HAND: { kinds: [], hours: 0.25 },
  MODEL_NOT_NAMED: { kinds: ['RESEARCH'], hours: 0.5 },
  ELECTRICAL_HAZARD_OPEN: { kinds: AT_THE_BENCH, hours: 4 },
  BLOCKING_FINDING_OPEN: { kinds: AT_THE_BENCH, hours: 4 },
  HAZARD_NOT_CLEARED: { kinds: ['CLEANING', 'WIRING', 'POWER', 'CAPACITORS'], hours: 2 },
  COMPONENT_REJECTED: { kinds: ['TUBES', 'CAPACITORS', 'REPAIR'], hours: 1 },
  COMPONENT_SUSPECT: { kinds: ['TUBES', 'CAPACITORS', 'REPAIR'], hours: 1 },
  POSITION_MISSING: { kinds: ['TUBES', 'MECHANICAL', 'CABINET', 'RESEARCH'], hours: 1.5 },
  POSITION_WRONG: { kinds: ['TUBES', 'MECHANICAL', 'CABINET', 'RESEARCH'], hours: 1.5 },
  ROLE_NOT_SERVED: { kinds: ['RESEARCH'], hours: 2 },
  HOUSING_NOT_SERVICEABLE: { kinds: AT_THE_BENCH, hours: 4 },
  HOUSED_IN_ITSELF: { kinds: [], hours: 0.25 },
  ACCESSORY_NOT_RECORDED: { kinds: [], hours: 0.25 },
  NO_FINAL_CHECK_NAMED: { kinds: ['TESTING'], hours: 1 },
  FINAL_CHECK_MISSING: { kinds: ['TESTING'], hours: 1 },
  FINAL_CHECK_FAILED: { kinds: ['TESTING', ...AT_THE_BENCH], hours: 4 },
  FINAL_CHECK_LAPSED: { kinds: ['TESTING'], hours: 1 },
  ACCESSORY_CHECKS_LAPSED: { kinds: ['TESTING'], hours: 1 },
};

/**
 * Roughly how long it takes to remove a blocker, in hours: what is left of the item's open tasks of
 * the sorts of work that mend it; where none is planned, a default.
 */
export function mendingHours(code: BlockerCode, openTasks: readonly OpenTask[]): MendingHours {
  const { kinds, hours } = MENDED_BY[code];
  const tasks = openTasks.filter(({ kind }) => kinds.includes(kind));
  if (tasks.length === 0) return { hours, restsOn: 'DEFAULT', taskIds: [] };
  return {
    hours: tasks.reduce((sum, { expectedHours }) => sum + expectedHours, 0),
    restsOn: 'TASKS',
    taskIds: tasks.map(({ taskId }) => taskId),
  };
}
