/** A ceiling, what counts towards it so far, and what a purchase adds; minor units of one currency. */
export interface CeilingBefore {
  readonly ceiling: number;
  readonly spent: number;
  readonly added: number;
}

export interface CeilingAfter {
  /** What would be left; below zero by what must give. */
  readonly left: number;
  /** The purchase takes it beyond, or further beyond, the ceiling; reaching it exactly does not. */
  readonly isBroken: boolean;
}

/** Where a purchase would leave a ceiling. Money that comes back breaks none. */
export function ceilingAfter({ ceiling, spent, added }: CeilingBefore): CeilingAfter {
  const left = ceiling - spent - added;
  return { left, isBroken: added > 0 && left < 0 };
}
