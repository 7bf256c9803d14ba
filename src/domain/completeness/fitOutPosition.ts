/** A place that a complete one of this model has. */
export interface FitOutPosition {
  readonly positionKey: string;
  /** Whether the set counts as incomplete without it. */
  readonly isRequired: boolean;
}
