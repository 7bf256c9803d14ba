/** How a figure came about: what was counted, by which rule, and as of when. */
export interface Basis {
  readonly counted: readonly CountedInput[];
  /** The rule in one sentence, for a reader who does not see the code. */
  readonly method: string;
  readonly asOfMs: number;
}

export interface CountedInput {
  /** A plural noun: "checks", "positions of the fit-out". */
  readonly what: string;
  readonly count: number;
}
