/** A file of the demo collection cannot be used: the message names the file and what to mend. */
export class DemoProblem extends Error {
  constructor(where: string, message: string, cause?: unknown) {
    super(`${where}: ${message}`, { cause });
    this.name = 'DemoProblem';
  }
}
