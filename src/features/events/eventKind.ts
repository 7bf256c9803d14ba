/** What can have happened, each with the words that a reader of feeds is shown as its tag. */
export const eventKinds = {
  SESSION_FINISHED: 'session finished',
  TASK_FINISHED: 'task finished',
  PART_FITTED: 'part fitted',
  PART_REMOVED: 'part removed',
  SET_ACQUIRED: 'set acquired',
  CHECK_PASSED: 'check passed',
  CHECK_FAILED: 'check failed',
  HAZARD_RAISED: 'hazard raised',
  HAZARD_CLEARED: 'hazard cleared',
  MAINTENANCE_DONE: 'maintenance done',
  RESTORATION_COMPLETED: 'restoration completed',
  LENT: 'lent',
  BACK_FROM_LOAN: 'back from loan',
  PARTED_WITH: 'parted with',
} as const;
export type EventKind = keyof typeof eventKinds;
