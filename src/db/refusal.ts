export type RefusalCode = 'INVALID' | 'NOT_FOUND' | 'CONFLICT' | 'OUT_OF_DATE';

/** One thing that a person can mend. */
export interface Refused {
  code: RefusalCode;
  message: string;
  /** Where in the input: `['lines', '2', 'share']`. */
  path: string[];
}

/** Ends a unit of work without a trace, and is returned to the person as problems. */
export class Refusal extends Error {
  constructor(readonly problems: readonly Refused[]) {
    super(problems.map((problem) => problem.message).join(' '));
    this.name = 'Refusal';
  }

  static invalid(message: string, path: string[] = []): Refusal {
    return new Refusal([{ code: 'INVALID', message, path }]);
  }

  static conflict(message: string, path: string[] = []): Refusal {
    return new Refusal([{ code: 'CONFLICT', message, path }]);
  }

  static notFound(what: string, path: string[] = ['id']): Refusal {
    const words = what.replaceAll('_', ' ');
    return new Refusal([
      { code: 'NOT_FOUND', message: `There is no ${words} with this id. Ask for it again.`, path },
    ]);
  }

  static stale(current: number, expected: number): Refusal {
    const message =
      `This record is at version ${current}; your change was made on version ${expected}. ` +
      'Load it again, look at what has changed, and send your change once more.';
    return new Refusal([{ code: 'OUT_OF_DATE', message, path: ['version'] }]);
  }
}
