/**
 * One writer at a time, first come first served.
 *
 * TypeORM shares one SQLite connection: without this, overlapping transactions nest into one
 * another and lose committed work without an error.
 */
export class WriteQueue {
  private tail: Promise<unknown> = Promise.resolve();

  run<Result>(work: () => Promise<Result>): Promise<Result> {
    const result = this.tail.then(work);
    this.tail = result.catch(() => undefined);
    return result;
  }

  /** Resolves when everything queued so far has ended. */
  async drained(): Promise<void> {
    await this.tail;
  }
}
