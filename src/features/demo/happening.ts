import type { UnitOfWork } from '../../db/unitOfWork.js';

/** Something that happens in the story, ready to be recorded. */
export interface Happening {
  at: Date;
  /** The write verb, for the history. */
  action: string;
  /** File and place in it, for whoever has to mend it. */
  where: string;
  play: (work: UnitOfWork) => Promise<unknown>;
}
