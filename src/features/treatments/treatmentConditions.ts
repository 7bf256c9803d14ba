import { equalTo, type Condition } from '../../api/kit/conditions.js';
import { containsWords } from '../../db/containsWords.js';
import type { TreatmentFilter } from './treatment.inputs.js';

/** For statements on `treatment`; the kind of agent is told where agents are joined. */
export const treatmentConditions = (filter: TreatmentFilter | null | undefined): Condition[] => [
  ...containsWords(['treatment.surface'], filter?.surface ?? ''),
  ...equalTo('treatment.material', filter?.material),
  ...equalTo('treatment.outcome', filter?.outcome),
];
