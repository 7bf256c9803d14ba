import type { FindingSeverity, HazardKind, PositionState, Zone } from '../../gql/graphql.js';

export interface DraftFinding {
  zone: Zone;
  severity: FindingSeverity;
  note: string;
  /** Pictures that are kept already and will be attached to it. */
  fileIds: readonly string[];
}

/** What was seen and not sent yet; and what of it has been sent, so that nothing is sent twice. */
export interface IntakeDraft {
  findings: readonly DraftFinding[];
  checks: Readonly<Partial<Record<string, PositionState>>>;
  hazards: Readonly<Partial<Record<HazardKind, string>>>;
  note: string;
  /** Set when it is first sent: an inspection of this minute that is there already is this one. */
  inspectedAt: string | null;
  /** Ids of the inspections there were when the first thing was typed; null before. */
  known: readonly string[] | null;
  raised: readonly HazardKind[];
  attached: readonly string[];
}

export const emptyIntake: IntakeDraft = {
  findings: [],
  checks: {},
  hazards: {},
  note: '',
  inspectedAt: null,
  known: null,
  raised: [],
  attached: [],
};

/** Where a draft is kept on this device. */
export const intakePlace = (number: string): string => `intake.set.${number}`;

/** In the order in which one walks round a set. */
export const zones = [
  'WHOLE',
  'CABINET',
  'FRONT_PANEL',
  'CONTROLS',
  'REAR_PANEL',
  'CORD_AND_CABLES',
  'CHASSIS_TOP',
  'TUBES',
  'FINAL_STAGE',
  'POWER_SECTION',
  'CHASSIS_UNDERSIDE',
  'PAPERS',
] as const satisfies readonly Zone[];
