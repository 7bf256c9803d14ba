import { queryInWork } from './queryInWork.js';
import { Refusal, type Refused } from './refusal.js';
import type { UnitOfWork } from './unitOfWork.js';

const longestText = 10_000;
/** PostgreSQL keeps no text with it. */
const noCharacter = '\u0000';

/** Gathers everything that is wrong with an input, so that a person hears of all of it at once. */
export class Checklist {
  private readonly problems: Refused[] = [];

  constructor(private readonly work: UnitOfWork) {}

  /** A text that must say something. @returns it without surrounding blanks. */
  words(text: string, path: string[], longest = 200): string {
    const trimmed = text.trim();
    if (trimmed === '') this.refuse('Say something here: it is empty.', path);
    if (trimmed.length > longest) {
      this.refuse(`This is ${trimmed.length} characters long; ${longest} is the most.`, path);
    }
    if (!trimmed.includes(noCharacter)) return trimmed;
    this.refuse('There is a null character in it. Type it again instead of pasting it.', path);
    return trimmed.replaceAll(noCharacter, '');
  }

  /** Running text, which may be missing. */
  text(text: string | null | undefined, path: string[]): string | null {
    if (text === null || text === undefined || text.trim() === '') return null;
    return this.words(text, path, longestText);
  }

  /** The record must be there. Null passes: say first whether it may be missing. */
  async exists(table: string, id: string | null, path: string[]): Promise<void> {
    if (id === null) return;
    const found = await queryInWork(this.work, `SELECT 1 AS "one" FROM ${table} WHERE id = ?`, [
      id,
    ]);
    if (found.length === 0) {
      const what = table.replaceAll('_', ' ');
      this.add({ code: 'NOT_FOUND', message: `There is no ${what} with this id.`, path });
    }
  }

  /** Holds or is refused. */
  that(holds: boolean, message: string, path: string[]): void {
    if (!holds) this.refuse(message, path);
  }

  refuse(message: string, path: string[]): void {
    this.add({ code: 'INVALID', message, path });
  }

  add(problem: Refused): void {
    this.problems.push(problem);
  }

  /** @throws Refusal with every problem found so far. */
  done(): void {
    if (this.problems.length > 0) throw new Refusal(this.problems);
  }
}
