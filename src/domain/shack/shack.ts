/** The rigs that nothing but sharing keeps off the air, and what can serve each of them. */
export interface Shack {
  readonly rigs: readonly ShackRig[];
  /** Accessories that move together have one housing unit; others are a unit of their own. */
  readonly unitOf: ReadonlyMap<string, string>;
}

export interface ShackRig {
  readonly rigId: string;
  readonly needs: readonly RoleNeed[];
}

/** A role that a rig cannot do without. */
export interface RoleNeed {
  readonly roleCode: string;
  /** The accessories that can fill it for this rig, serviceable at the moment asked about. */
  readonly accessoryIds: readonly string[];
}

/** An accessory that fills a role of a rig. */
export interface RoleAssignment {
  readonly roleCode: string;
  readonly accessoryId: string;
}
