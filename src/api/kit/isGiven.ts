/**
 * For fields of a change that cannot be emptied: GraphQL lets null through where a field may be
 * left out, and null then means the same.
 */
export const isGiven = <Value>(value: Value | null | undefined): value is Value =>
  value !== undefined && value !== null;
