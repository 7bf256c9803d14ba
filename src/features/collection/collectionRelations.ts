import { one } from '../../api/kit/relations.js';
import type { Relation } from '../../api/kit/typeReads.js';
import { calibrationRelationsOfCollection } from '../calibration/calibration.reads.js';
import { standingRelationsOfCollection } from '../standing/collectionStandingRelations.js';

/** What is asked of the whole collection; each feature adds what it knows. */
export const collectionRelations: Record<string, Relation> = {
  ...standingRelationsOfCollection,
  ...calibrationRelationsOfCollection,
  owner: one('Party', 'ownerId'),
};
