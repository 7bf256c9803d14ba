/** A figure with its name and unit, as it went into a calculation. */
export interface Quantity {
  readonly name: string;
  readonly value: number;
  /** UCUM code where it has one; 1 for a plain number. */
  readonly unit: string;
}

/** How an answer came about, so that a reader can do the sum again and judge it. */
export interface Working {
  readonly formula: string;
  readonly inputs: readonly Quantity[];
  readonly assumptions: readonly string[];
  /** Title, edition and table; or "common practice, no source", or "from memory". */
  readonly sources: readonly string[];
  readonly cautions: readonly string[];
}

/** Said with every answer that somebody may take to the bench. */
export const localCodesFirst =
  'A sum on paper proves nothing at the bench: measure before you touch. Follow local codes, and get qualified help where you are not qualified yourself.';
