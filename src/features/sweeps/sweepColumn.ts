/** One column of a sweep: what is read in every position. */
export interface SweepColumn {
  quantity: string;
  /** UCUM. */
  unit: string;
}
