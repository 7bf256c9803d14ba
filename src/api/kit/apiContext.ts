import type { Database } from '../../db/database.js';
import type { Reads } from './typeReads.js';

/** What every resolver is handed. */
export interface ApiContext {
  database: Database;
  /** Milliseconds since the epoch, read once for the request, so that one answer has one "now". */
  nowMs: number;
  /** The person who asks, as far as the server knows; for the history. */
  actorId: string | null;
  /** Folder of photographs and papers; null where none is at hand. */
  attachmentsFolder: string | null;
  /** How each type of the schema is read, by name. */
  reads: Reads;
}
