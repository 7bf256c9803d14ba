import type { PositionState } from '../completeness/positionCheck.js';
import type { PositionStanding } from '../completeness/positionStanding.js';
import type { ComponentState } from '../condition/componentState.js';
import type { JudgedReading } from '../condition/judgedReading.js';

/** Everything a readiness answer rests on, as recorded at the moment that is asked about. */
export interface ReadinessFacts {
  readonly rig: ItemFacts;
  /** The positions of the model's fit-out with their standing; empty when it has none. */
  readonly positions: readonly PositionFacts[];
  readonly requiredRoles: readonly RoleFacts[];
  /** All accessories named by a role, and all that house one of them. */
  readonly accessories: readonly AccessoryFacts[];
  readonly procedures: readonly ProcedureFacts[];
  /** An accessory with no procedure named may serve; a rig may not go on the air without one. */
  readonly mayLackFinalChecks?: boolean;
  /** Checks made on the rig, in any order; per procedure the latest counts. */
  readonly finalChecks: readonly FinalCheckFacts[];
}

export interface ItemFacts {
  readonly itemId: string;
  readonly name: string;
  readonly isRetired: boolean;
  /** False while it is lent, at a repairer, sold or lost. */
  readonly isInHand: boolean;
  readonly findings: readonly FindingFacts[];
  readonly hazards: readonly HazardFacts[];
  readonly components: readonly ComponentFacts[];
  /** What is known of which one it is; left out where that is not asked, as of an accessory. */
  readonly identity?: IdentityFacts;
  /** The latest look over it; null or left out when none is recorded. */
  readonly lastInspection?: { readonly inspectionId: string; readonly atMs: number } | null;
}

export interface IdentityFacts {
  /** null: nothing says what it should have, or on which bands it works. */
  readonly modelName: string | null;
  readonly serialNumber: string | null;
}

export interface AccessoryFacts extends ItemFacts {
  /** The accessory whose case or chassis it sits in; null when it stands by itself. */
  readonly housedInId: string | null;
  /** The positions of its model's fit-out; left out or empty when it has none. */
  readonly positions?: readonly PositionFacts[];
  /** Final checks named for it; left out or empty when there are none, and then none is asked. */
  readonly procedures?: readonly ProcedureFacts[];
  readonly finalChecks?: readonly FinalCheckFacts[];
}

export interface FindingFacts {
  readonly findingId: string;
  readonly description: string;
  readonly isOpen: boolean;
  readonly isBlocking: boolean;
  /** An electrical danger, such as a chassis at mains potential: nothing may be connected. */
  readonly isElectricalHazard: boolean;
  readonly seenAtMs?: number;
  /** null while nothing has been decided. */
  readonly settledAtMs?: number | null;
}

export interface HazardFacts {
  readonly hazardId: string;
  readonly description: string;
  /** The usual caution, shown wherever the hazard is named; null when none is recorded. */
  readonly caution: string | null;
  readonly isCleared: boolean;
  /** The check that alone clears it; null when none is named. */
  readonly clearedByCheck: string | null;
  /** Belongs to the design and stays, such as a high plate voltage: a caution, never a blocker. */
  readonly isByDesign: boolean;
  readonly raisedAtMs?: number;
  readonly clearedAtMs?: number | null;
  /** The check as it was done, in words; null while it is not cleared. */
  readonly checkDone?: string | null;
}

export interface ComponentFacts {
  readonly componentId: string;
  readonly name: string;
  readonly isInRequiredPosition: boolean;
  readonly state: ComponentState;
  /** The position that it sits in. */
  readonly positionKey?: string;
  readonly fittedAtMs?: number;
  /** The readings that its state rests on. */
  readonly readings?: readonly JudgedReading[];
}

export interface PositionFacts extends Partial<
  Pick<PositionStanding, 'restsOn' | 'sinceMs' | 'checkId' | 'componentId'>
> {
  readonly positionKey: string;
  readonly isRequired: boolean;
  readonly state: PositionState;
}

export interface RoleFacts {
  readonly roleCode: string;
  /** As it stands in a sentence: "power supply". */
  readonly roleName: string;
  /** The accessories recorded as able to fill it for this rig. */
  readonly accessoryIds: readonly string[];
}

export interface ProcedureFacts {
  readonly procedureCode: string;
  readonly name: string;
  /** Days of 24 hours from the check on; null: it does not lapse. */
  readonly validityDays: number | null;
}

export interface FinalCheckFacts {
  readonly checkId: string;
  readonly procedureCode: string;
  readonly isPassed: boolean;
  readonly doneAtMs: number;
}
