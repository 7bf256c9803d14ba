import type { Database } from '../../db/database.js';
import { recordEntities } from '../entities.js';
import type { SignedHead } from './headStatement.js';
import { whyHeadDiffers } from './verifyHeads.js';
import { verifyLog, type VerifiedLog } from './verifyLog.js';
import { verifyRecords, type RecordFault } from './verifyRecords.js';

export interface VerifiedCollection {
  log: VerifiedLog;
  heads: { head: SignedHead; why: string | null }[];
  recordsChecked: number;
  recordFaults: RecordFault[];
}

/**
 * Holds the log against itself, the signed heads against the log, and the records against what the
 * log says of them, all as of one instant.
 * @param printed heads that somebody kept elsewhere, beside those in the collection
 */
export const verifyCollection = (
  database: Database,
  printed: readonly SignedHead[] = [],
  onEntry?: (done: number) => void,
): Promise<VerifiedCollection> =>
  database.snapshot(async (reader) => {
    const kept = await reader.rows<SignedHead>(
      `SELECT sequence AS "sequence", entry_hash AS "entryHash", signed_at AS "signedAt",
         public_key AS "publicKey", signature AS "signature"
       FROM signed_head ORDER BY signed_at, id`,
    );
    const heads = [...kept, ...printed].map((head) => ({
      ...head,
      sequence: Number(head.sequence),
    }));
    const wanted = new Set(heads.map(({ sequence }) => sequence));
    const log = await verifyLog(reader, wanted, onEntry);
    const { checked, faults } = await verifyRecords(database.dataSource, reader, recordEntities);
    return {
      log,
      heads: heads.map((head) => ({ head, why: whyHeadDiffers(head, log) })),
      recordsChecked: checked,
      recordFaults: faults,
    };
  });
