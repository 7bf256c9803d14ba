import type { TakenColumn } from './importReport.js';
import type { ListField } from './listField.js';
import type { ListProblems } from './listProblems.js';

/** One row of a list, asked by field; what is wrong is reported under its own line and column. */
export class ListRow {
  private problemsBefore: number;

  constructor(
    readonly line: number,
    private readonly cells: readonly string[],
    private readonly columns: readonly TakenColumn[],
    private readonly problems: ListProblems,
  ) {
    this.problemsBefore = problems.count;
  }

  /** The cell's text without surrounding blanks; null when it is empty or there is no such column. */
  text(field: ListField): string | null {
    const index = this.columns.findIndex((column) => column.field === field);
    return index < 0 ? null : (this.cells[index] ?? '').trim() || null;
  }

  /** As `text`, and not longer than the field can hold. */
  word(field: ListField, longest = 200): string | null {
    const text = this.text(field);
    if (text !== null && text.length > longest) {
      this.refuse(field, `This is ${text.length} characters long; ${longest} is the most.`);
    }
    return text;
  }

  /** The heading under which a field stands in this list. */
  heading(field: ListField): string | null {
    return this.columns.find((column) => column.field === field)?.column ?? null;
  }

  refuse(field: ListField | null, message: string): void {
    this.problems.add(this.line, field && this.heading(field), message);
  }

  /** Remarks, and under its heading what stands in columns that are none of the fields. */
  note(further: readonly string[]): string | null {
    const lines = this.columns.flatMap(({ column, field, isIgnored }, index) => {
      const text = (this.cells[index] ?? '').trim();
      if (isIgnored || text === '' || (field !== null && field !== 'NOTE')) return [];
      return [field === 'NOTE' && this.heading('NOTE') === column ? text : `${column}: ${text}`];
    });
    return [...lines, ...further].join('\n') || null;
  }

  get isSound(): boolean {
    return this.problems.count === this.problemsBefore;
  }

  /** Refuses what neither engine keeps, and counts the cells. @returns whether reading may go on. */
  hasGoodShape(): boolean {
    const surplus = this.cells.slice(this.columns.length).some((cell) => cell.trim() !== '');
    if (surplus || this.cells.length < this.columns.length) {
      this.refuse(
        null,
        `This row has ${this.cells.length} cells; the header has ${this.columns.length}. ` +
          'Put a cell that holds the divider itself in quotation marks.',
      );
    }
    this.cells.forEach((cell, index) => {
      if (cell.includes('\0')) {
        const column = this.columns[index]?.column ?? null;
        this.problems.add(this.line, column, 'This cell holds a NUL character: take it out.');
      }
    });
    return this.isSound;
  }
}
