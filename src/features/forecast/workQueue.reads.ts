import { computedReads } from '../../api/kit/computedReads.js';
import { heldRows } from '../../api/kit/heldRows.js';
import { one } from '../../api/kit/relations.js';

/** A queue is no record: its row has the id of the person, and those in it the projects' ids. */
export const workQueueReads = [
  computedReads('WorkQueue', {
    person: one('Party', 'id'),
    projects: heldRows('QueuedProject', 'projects'),
    ifMovedUp: heldRows('QueueEffect', 'ifMovedUp'),
  }),
  computedReads('QueuedProject', { project: one('Project', 'id') }),
  computedReads('QueueEffect', { project: one('Project', 'id') }),
] as const;
