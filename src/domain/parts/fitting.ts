/** A component sat in a position from `fittedAtMs` on, up to but not including `removedAtMs`. */
export interface Fitting {
  readonly componentId: string;
  /** Names the place once among the fittings looked at: with several items, item and position. */
  readonly positionKey: string;
  readonly fittedAtMs: number;
  /** null: still there. */
  readonly removedAtMs: number | null;
}
