/** Something a person can mend: what is wrong, in a sentence, and where it was entered. */
export interface Problem<Code extends string = string> {
  readonly code: Code;
  /** A plain sentence that says what to mend. */
  readonly message: string;
  /** The way to the field from the thing that was entered, for example `['breaks', '1', 'endedAt']`. */
  readonly path: readonly string[];
  /** An ERROR must be mended; a WARNING may be confirmed as true. */
  readonly severity: 'ERROR' | 'WARNING';
}
