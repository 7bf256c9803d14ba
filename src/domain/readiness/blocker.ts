import type { ReadinessLevel } from './readinessLevel.js';

export type SubjectKind =
  'ITEM' | 'ROLE' | 'FINDING' | 'HAZARD' | 'COMPONENT' | 'POSITION' | 'PROCEDURE';

/** Something that may be pointed at on the screen, with a sentence about it. */
interface Remark<Code extends string> {
  readonly code: Code;
  readonly message: string;
  readonly subjectKind: SubjectKind;
  readonly subjectId: string;
}

/** One thing that stands in the way. */
export interface Blocker extends Remark<BlockerCode> {
  /** The best level that can be reached while it stands. */
  readonly level: Exclude<ReadinessLevel, 'ON_AIR_READY'>;
  /** What would remove it, as a sentence. */
  readonly wouldBeMetBy: string;
}

export type BlockerCode =
  | 'RETIRED'
  | 'NOT_IN_HAND'
  | 'MODEL_NOT_NAMED'
  | 'ELECTRICAL_HAZARD_OPEN'
  | 'BLOCKING_FINDING_OPEN'
  | 'HAZARD_NOT_CLEARED'
  | 'COMPONENT_REJECTED'
  | 'COMPONENT_SUSPECT'
  | 'POSITION_MISSING'
  | 'POSITION_WRONG'
  | 'ROLE_NOT_SERVED'
  | 'HOUSING_NOT_SERVICEABLE'
  | 'HOUSED_IN_ITSELF'
  | 'ACCESSORY_NOT_RECORDED'
  | 'NO_FINAL_CHECK_NAMED'
  | 'FINAL_CHECK_MISSING'
  | 'FINAL_CHECK_FAILED'
  | 'FINAL_CHECK_LAPSED'
  | 'ACCESSORY_CHECKS_LAPSED';

/** Something to know that does not stand in the way. */
export type Caution = Remark<CautionCode>;

export type CautionCode =
  | 'HAZARD_BY_DESIGN'
  | 'FINDING_OPEN'
  | 'COMPONENT_NOT_GOOD'
  | 'COMPONENTS_NOT_PROVEN'
  | 'POSITIONS_UNKNOWN'
  | 'ACCESSORY_NOT_SERVICEABLE';
