import type { ProjectStatus } from './projectStatus.js';

/** A closed project takes no more tasks and no timer. */
export const isClosed = (status: ProjectStatus): boolean =>
  status === 'COMPLETED' || status === 'ABANDONED';
