/** Characters that the note of a finding may have. */
export const longestFinding = 10_000;
