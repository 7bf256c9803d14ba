/** A stretch of use on the air. */
export interface UseSpell {
  readonly startedAtMs: number;
  readonly minutes: number;
}
