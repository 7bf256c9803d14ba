/** Where a task stands. A dropped task was given up: it counts neither as work left nor as done. */
export type TaskState = 'NOT_STARTED' | 'IN_PROGRESS' | 'DONE' | 'DROPPED';
