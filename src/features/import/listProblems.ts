/** Something in a list that has to be mended before it can be loaded. */
export interface ListProblem {
  /** Line of the file in which the row begins, from 1; null when the list as a whole is at fault. */
  line: number | null;
  /** Heading of the column; null when the row as a whole is at fault. */
  column: string | null;
  message: string;
}

/** Gathers every problem of a list; keeps the first ones and counts them all. */
export class ListProblems {
  private readonly kept: ListProblem[] = [];
  count = 0;

  constructor(private readonly mostKept: number) {}

  add(line: number | null, column: string | null, message: string): void {
    this.count++;
    if (this.kept.length < this.mostKept) this.kept.push({ line, column, message });
  }

  /** Those of the list as a whole, then line by line. */
  inOrder(): ListProblem[] {
    return [...this.kept].sort((left, right) => (left.line ?? 0) - (right.line ?? 0));
  }
}
