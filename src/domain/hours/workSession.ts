export interface WorkBreak {
  readonly startedAtMs: number;
  /** null while the break lasts. */
  readonly endedAtMs: number | null;
}

/** Time one person gave to one item. Instants are epoch milliseconds. */
export interface WorkSession {
  readonly id: string;
  readonly personId: string;
  readonly itemId: string;
  /** null when the time belongs to the item as a whole. */
  readonly taskId: string | null;
  readonly taskKind: string;
  readonly startedAtMs: number;
  /** null while the session runs. */
  readonly endedAtMs: number | null;
  /** IANA name of the zone the work was done in; it decides which local month the time falls in. */
  readonly zone: string;
  readonly breaks: readonly WorkBreak[];
}
