import type { DataSource } from 'typeorm';
import type { Engine } from './dialect.js';
import type { Reader } from './reader.js';
import type { UnitOfWork } from './unitOfWork.js';

/** Who does what, for the history. */
export interface Act {
  /** The verb: `fitComponent`. */
  action: string;
  actorId: string | null;
  /** The instant of the act, ISO 8601 UTC. */
  now: string;
}

/** The collection's records: read side and write side. */
export interface Database {
  engine: Engine;
  dataSource: DataSource;
  reader: Reader;
  /**
   * Runs `fn` in one transaction; all is kept or nothing. Acts on SQLite wait their turn.
   * `fn` must not wait for anything but the database, and must not call `write` itself.
   */
  write<Result>(act: Act, fn: (work: UnitOfWork) => Promise<Result>): Promise<Result>;
  /**
   * Reads everything as of one instant, whatever is written meanwhile, over a connection of its
   * own; the reader it hands over ends with `fn`.
   */
  snapshot<Result>(fn: (reader: Reader) => Promise<Result>): Promise<Result>;
  /**
   * Calls back after each unit of work of this process that was committed.
   * @returns what ends the calling.
   */
  onCommit(listener: () => void): () => void;
  close(): Promise<void>;
}
