import { one } from '../../api/kit/relations.js';
import type { TypeReads } from '../../api/kit/typeReads.js';

/** Suggestions are computed for the moment and have no id of their own. */
const suggested = (typeName: string): TypeReads => ({
  typeName,
  byIds: () => Promise.resolve([]),
  relations: { task: one('Task', 'taskId') },
});

export const nextTaskReads = suggested('NextTask');
export const heldBackTaskReads = suggested('HeldBackTask');
