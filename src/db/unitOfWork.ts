import type { EntityManager, ObjectLiteral } from 'typeorm';
import type { Engine } from './dialect.js';

/** One record as it was and as it is now, within a unit of work. */
export interface Write {
  table: string;
  recordId: string;
  before: ObjectLiteral | null;
  after: ObjectLiteral | null;
}

/** One transaction, opened at the mutation's edge and handed down. */
export interface UnitOfWork {
  manager: EntityManager;
  engine: Engine;
  /** The verb being carried out: `fitComponent`. */
  action: string;
  actorId: string | null;
  /** The instant of everything recorded here, ISO 8601 UTC. */
  now: string;
  writes: Write[];
  /**
   * Lets everything follow from the writes so far (history, search text, standings), in the same
   * transaction, and forgets them. A bulk load calls it after each batch, so that its memory does
   * not grow with its length; otherwise it happens once, before the commit.
   */
  flush(): Promise<void>;
}
