/** What shows that a share of a task is done. */
export interface Evidence {
  readonly kind: 'NOTE' | 'READING' | 'PHOTOGRAPH';
  /** The note itself, or the id of the reading or photograph. */
  readonly reference: string;
}

export interface WeightedStep {
  readonly name: string;
  /** Its share of the task, relative to the other steps; above 0. */
  readonly weight: number;
  readonly isDone: boolean;
}

/**
 * How a task earns its budgeted hours before it is finished, agreed when it is planned.
 * Source: the techniques of ANSI/EIA-748 practice: fixed formula (0/100, 50/50), weighted
 * milestones, per cent complete.
 */
export type EarningRule =
  /** Nothing until the task is done. */
  | { readonly kind: 'ZERO_HUNDRED' }
  /** Half on starting, half on finishing. */
  | { readonly kind: 'FIFTY_FIFTY' }
  /** The weight of the steps that are done. */
  | { readonly kind: 'WEIGHTED_STEPS'; readonly steps: readonly WeightedStep[] }
  /** A stated percentage, which earns nothing unless something shows it. */
  | {
      readonly kind: 'PERCENT_WITH_EVIDENCE';
      readonly percent: number;
      readonly evidence: Evidence | null;
    };
