/** Ends a command with a sentence that says what to mend. */
export class CommandFailure extends Error {}
