/** A failure that a person can mend; its message says how. Shown without a stack. */
export class PreparationFailed extends Error {}
